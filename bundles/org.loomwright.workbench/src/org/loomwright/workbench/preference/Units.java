// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.preference;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.ui.preferences.ScopedPreferenceStore;
import org.loomwright.workbench.app.Ids;

/** Units in which figures are shown. Files always hold mm and mm2. */
public final class Units {
    /** Key of the unit of sections. */
    public static final String SECTION = "units.section";
    /** Key of the system of units of lengths, masses and temperatures. */
    public static final String SYSTEM = "units.system";

    private static final IPreferenceStore STORE = new ScopedPreferenceStore(InstanceScope.INSTANCE, Ids.PLUGIN);

    /** Units of conductor sections. */
    public enum Section {
        /** Square millimetres. */
        MM2,
        /** American wire gauge. */
        AWG
    }

    /** Systems of units. */
    public enum Length {
        /** Millimetres and metres, kilograms, degrees Celsius. */
        METRIC,
        /** Inches and feet, pounds, degrees Fahrenheit. */
        IMPERIAL
    }

    private Units() {
    }

    /** The unit of sections. */
    public static Section section() {
        return Section.AWG.name().equals(STORE.getString(SECTION)) ? Section.AWG : Section.MM2;
    }

    /** The system of units. */
    public static Length system() {
        return Length.IMPERIAL.name().equals(STORE.getString(SYSTEM)) ? Length.IMPERIAL : Length.METRIC;
    }

    /** Where the choices are kept; listen here for changes. */
    public static IPreferenceStore store() {
        return STORE;
    }
}
