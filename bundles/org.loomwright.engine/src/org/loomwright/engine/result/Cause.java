// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.result;

/**
 * An element other than the finding's own that brings the finding about.
 *
 * @param element id of the element
 * @param what    its part in it, in words
 * @param share   its part in figures, for example 38 mV or 9.7 %; null when there is none
 */
public record Cause(String element, String what, Quantity share) {
}
