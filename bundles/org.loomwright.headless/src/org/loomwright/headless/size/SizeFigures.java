// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.size;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.loomwright.engine.result.StudyResult.ElementFigures;
import org.loomwright.engine.sizing.SizingDerivations;
import org.loomwright.engine.sizing.SizingResult;

/** How the figures of a sizing came about, by element: totals, cables, protectors, loads whose limits cost something. */
final class SizeFigures {
    /** The element that stands for the whole. */
    static final String WHOLE = "sums";

    private final SizedVehicle sized;

    SizeFigures(SizedVehicle sized) {
        this.sized = sized;
    }

    /** Those of one element, or of all for an empty id. */
    Stream<ElementFigures> of(String element) {
        return all().stream().filter(figures -> element.isEmpty() || figures.element().equals(element));
    }

    private List<ElementFigures> all() {
        SizingResult result = sized.result();
        List<ElementFigures> all = new ArrayList<>();
        all.add(new ElementFigures(WHOLE, null, SizingDerivations.of(result)));
        result.cables().forEach(cable -> all.add(new ElementFigures(cable.id(), null, cable.derivations())));
        result.protectors().forEach(each -> all.add(new ElementFigures(each.way(), null, each.derivations())));
        result.sensitivity().forEach(cost -> all.add(new ElementFigures(cost.element(), null,
                SizingDerivations.of(result, cost))));
        return all;
    }
}
