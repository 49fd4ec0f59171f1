// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.navigator;

import org.eclipse.core.resources.IFile;

/**
 * An arrangement of a vehicle file in the tree.
 *
 * @param file    the vehicle's file
 * @param name    name of the arrangement
 * @param label   its label; empty when it has none
 * @param adopted the vehicle's adopted one
 */
public record ArrangementNode(IFile file, String name, String label, boolean adopted) {
}
