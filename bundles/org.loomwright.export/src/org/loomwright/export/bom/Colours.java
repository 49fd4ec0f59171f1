// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;

/** Colours of a cable in one order, so that a cable with its cores named the other way round is still the same cable. */
final class Colours {
    private Colours() {
    }

    /** Of the cores of a cable. */
    static String of(Cable cable) {
        return sorted(cable.getCores().stream().map(Core::getColour).filter(Objects::nonNull).toList());
    }

    /** Of colours divided by blanks. */
    static String of(String colours) {
        return sorted(Arrays.asList(colours.split("\\s+")));
    }

    private static String sorted(List<String> colours) {
        return String.join(" ", colours.stream().filter(colour -> !colour.isBlank()).map(String::strip).sorted().toList());
    }
}
