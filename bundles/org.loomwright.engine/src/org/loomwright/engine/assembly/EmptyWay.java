// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

/**
 * A way of a box in which nothing is fitted although a cable is connected to its outlet; it conducts nothing. A way that is
 * reserved, or belongs to the base vehicle, is none.
 *
 * @param id      id of the way
 * @param takes   forms that fit it, in the words of the libraries, blank separated; empty when the part states none
 * @param fitting the way with the first protector on offer for it, its rating not chosen yet (NaN); its options are empty where
 *                the libraries have none
 */
public record EmptyWay(String id, String takes, Plan.Protector fitting) {
}
