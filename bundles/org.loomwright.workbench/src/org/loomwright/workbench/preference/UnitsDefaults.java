// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.preference;

import org.eclipse.core.runtime.preferences.AbstractPreferenceInitializer;
import org.eclipse.core.runtime.preferences.DefaultScope;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.loomwright.workbench.app.Ids;

/** Square millimetres and metric units, until somebody chooses others. */
public final class UnitsDefaults extends AbstractPreferenceInitializer {
    @Override
    public void initializeDefaultPreferences() {
        IEclipsePreferences defaults = DefaultScope.INSTANCE.getNode(Ids.PLUGIN);
        defaults.put(Units.SECTION, Units.Section.MM2.name());
        defaults.put(Units.SYSTEM, Units.Length.METRIC.name());
    }
}
