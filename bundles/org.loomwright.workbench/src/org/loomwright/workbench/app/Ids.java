// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

/** Names under which the workbench's parts are registered. */
public final class Ids {
    /** The bundle. */
    public static final String PLUGIN = "org.loomwright.workbench";
    /** The only perspective. */
    public static final String PERSPECTIVE = PLUGIN + ".planning";
    /** Editor of a vehicle. */
    public static final String EDITOR = PLUGIN + ".editor";
    /** Reader of libraries, practices and stocks, and of files with faults. */
    public static final String FILE_EDITOR = PLUGIN + ".file";
    /** First screen. */
    public static final String WELCOME = PLUGIN + ".welcome";
    /** Tree of vehicles and their files. */
    public static final String VEHICLES = PLUGIN + ".vehicles";
    /** Findings of the vehicle in the editor. */
    public static final String FINDINGS = PLUGIN + ".findings";
    /** How a figure came about. */
    public static final String DERIVATION = PLUGIN + ".derivation";
    /** Arrangements beside one another. */
    public static final String COMPARISON = PLUGIN + ".comparison";
    /** Time-current chart. */
    public static final String CHART = PLUGIN + ".chart";
    /** Figures of a study. */
    public static final String STUDY = PLUGIN + ".study";
    /** Problems of all files, the platform's. */
    public static final String PROBLEMS = "org.eclipse.ui.views.ProblemView";
    /** Properties of what is selected, the platform's. */
    public static final String PROPERTIES = "org.eclipse.ui.views.PropertySheet";
    /** Outline of the editor, the platform's. */
    public static final String OUTLINE = "org.eclipse.ui.views.ContentOutline";
    /** Running jobs, the platform's. */
    public static final String PROGRESS = "org.eclipse.ui.views.ProgressView";

    private Ids() {
    }
}
