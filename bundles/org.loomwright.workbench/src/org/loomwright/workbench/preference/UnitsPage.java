// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.preference;

import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.RadioGroupFieldEditor;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;

/** Choice of the units shown. */
public final class UnitsPage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {
    /** The page. */
    public UnitsPage() {
        super(GRID);
        setPreferenceStore(Units.store());
        setDescription(Messages.Units_description);
    }

    @Override
    public void init(IWorkbench workbench) {
        // everything stands in the store
    }

    @Override
    protected void createFieldEditors() {
        addField(new RadioGroupFieldEditor(Units.SECTION, Messages.Units_section, 1, new String[][] {
            {Messages.Units_mm, Units.Section.MM2.name()}, {Messages.Units_awg, Units.Section.AWG.name()}},
                getFieldEditorParent(), true));
        addField(new RadioGroupFieldEditor(Units.SYSTEM, Messages.Units_system, 1, new String[][] {
            {Messages.Units_metric, Units.Length.METRIC.name()}, {Messages.Units_imperial, Units.Length.IMPERIAL.name()}},
                getFieldEditorParent(), true));
    }
}
