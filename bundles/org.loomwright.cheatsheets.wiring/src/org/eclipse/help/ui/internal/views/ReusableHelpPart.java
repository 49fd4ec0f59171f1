// SPDX-License-Identifier: EPL-2.0
package org.eclipse.help.ui.internal.views;

/** Stands in for the part of the help system that holds pages; see {@link HelpTray}. */
public class ReusableHelpPart {
    /** A page of it. */
    public static class HelpPartPage implements IHelpPartPage {
    }
}
