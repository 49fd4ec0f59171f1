// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

/**
 * The real colour of a conductor's insulation; for swatches only, never for lines.
 *
 * @param letters one colour code of IEC 60757, for example BK
 */
public record CableTone(String letters) implements Tone {
}
