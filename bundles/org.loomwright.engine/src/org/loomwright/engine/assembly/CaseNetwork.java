// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import org.loomwright.engine.flow.Network;

/**
 * The network of one case with the way back to the plan. Arrays are indexed as the plan's lists and must not be changed;
 * {@code -1} stands for none.
 *
 * @param network      the network
 * @param terminalNode node of each terminal (earth points included)
 * @param bodyNode     node of each structure body
 * @param conductorItem item of each conductor
 * @param elementItem  item of each element; for a demand the item of the load when it is on, else -1
 * @param standbyItem  item of each demand's standby current, or -1
 * @param bondItem     item of each bond
 * @param linkItem     item of each body link
 * @param earthItem    item of the contact between each earth point (terminal index) and its body
 * @param caseItem     item of the contact between each case terminal (terminal index) and its body
 */
public record CaseNetwork(Network network, int[] terminalNode, int[] bodyNode, int[] conductorItem, int[] elementItem,
        int[] standbyItem, int[] bondItem, int[] linkItem, int[] earthItem, int[] caseItem) {
}
