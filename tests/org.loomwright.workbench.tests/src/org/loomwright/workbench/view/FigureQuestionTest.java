// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Quantity;

class FigureQuestionTest {
    private static Derivation derived(String figure, double value, String unit) {
        return new Derivation(figure, Quantity.of(value, unit), "", List.of(), null);
    }

    private final Derivation current = derived("current", 9.123, "A");
    private final Derivation rating = derived("rating", 72.8, "A");
    private final Derivation drop = derived("drop", 0.32774, "V");
    private final List<Derivation> all = List.of(current, rating, drop);

    @Test
    void theFigureShownIsFoundThoughItWasRounded() {
        assertEquals(current, FigureQuestion.live("W1", Quantity.of(9.12, "A")).answer(all));
        assertEquals(rating, FigureQuestion.live("W1", Quantity.of(72.8, "A")).answer(all));
    }

    @Test
    void theFigureIsFoundInAnotherUnitOfItsDimensionAndWhateverItsSign() {
        assertEquals(drop, FigureQuestion.live("W1", Quantity.of(-328, "mV")).answer(all));
    }

    @Test
    void aFigureThatIsNotDerivedIsAnsweredByNone() {
        assertNull(FigureQuestion.live("W1", Quantity.of(9.5, "A")).answer(all));
        assertNull(FigureQuestion.live("W1", Quantity.of(9.123, "W")).answer(all));
        assertNull(FigureQuestion.live("W1", null).answer(all));
    }
}
