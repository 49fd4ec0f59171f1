// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Comparison_asTheyStand;
    public static String Comparison_how;
    public static String Comparison_message;
    public static String Comparison_one;
    public static String Comparison_sized;
    public static String Comparison_title;
    public static String Legend_bodies;
    public static String Legend_cables;
    public static String Legend_conductors;
    public static String Legend_contacts;
    public static String Legend_copper;
    public static String Legend_currents;
    public static String Legend_devices;
    public static String Legend_faultReturns;
    public static String Legend_figures;
    public static String Legend_limits;
    public static String Legend_protectors;
    public static String Legend_returns;
    public static String Legend_sections;
    public static String Legend_straps;
    public static String Legend_voltages;
    public static String Objective_copper;
    public static String Objective_price;
    public static String Objective_sections;
    public static String Objective_stock;
    public static String Sizing_all;
    public static String Sizing_applied;
    public static String Sizing_apply;
    public static String Sizing_changed;
    public static String Sizing_closed;
    public static String Sizing_least;
    public static String Sizing_message;
    public static String Sizing_refused;
    public static String Sizing_same;
    public static String Sizing_title;
    public static String Study_comparison;
    public static String Study_earth;
    public static String Study_failed;
    public static String Study_job;
    public static String Study_noVehicle;
    public static String Study_protection;
    public static String Study_sizing;
    public static String Summary_alone;
    public static String Summary_changed;
    public static String Summary_earth;
    public static String Summary_nothingOpen;
    public static String Summary_proof;
    public static String Summary_total;
    public static String Summary_totals;
    public static String Summary_unknown;
    public static String Table_bodies;
    public static String Table_cables;
    public static String Table_conductors;
    public static String Table_contacts;
    public static String Table_copper;
    public static String Table_currents;
    public static String Table_devices;
    public static String Table_faultReturns;
    public static String Table_figures;
    public static String Table_limits;
    public static String Table_protectors;
    public static String Table_returns;
    public static String Table_sections;
    public static String Table_straps;
    public static String Table_voltages;

    static {
        NLS.initializeMessages("org.loomwright.workbench.study.messages", Messages.class);
    }

    private Messages() {
    }
}
