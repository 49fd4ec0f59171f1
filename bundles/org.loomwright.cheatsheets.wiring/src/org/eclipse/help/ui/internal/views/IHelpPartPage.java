// SPDX-License-Identifier: EPL-2.0
package org.eclipse.help.ui.internal.views;

/** Stands in for a page of the help system; see {@link HelpTray}. */
public interface IHelpPartPage {
}
