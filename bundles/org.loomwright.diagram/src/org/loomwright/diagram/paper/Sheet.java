// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import java.util.List;

/**
 * One sheet of paper, drawn.
 *
 * @param paper  paper
 * @param title  title with the number of the sheet
 * @param layers what is on it, in the order of painting
 */
public record Sheet(Paper paper, String title, List<Layer> layers) {
    public Sheet {
        layers = List.copyOf(layers);
    }
}
