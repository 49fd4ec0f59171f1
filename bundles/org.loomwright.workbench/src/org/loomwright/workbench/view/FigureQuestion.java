// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.List;
import java.util.Map;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.StudyResult.ElementFigures;

/**
 * A figure that a person wants explained.
 *
 * @param subject what the figures belong to, as shown; null for the element
 * @param element id of the element; null for figures of no element
 * @param figures how its figures came about; null for those of the latest analysis, in the case looked at
 * @param wanted  the figure pointed at, as it is shown; null for all of them
 */
public record FigureQuestion(String subject, String element, List<ElementFigures> figures, Quantity wanted) {
    /** Figures are shown with three digits: what is nearer than this is the same. */
    private static final double SHOWN = 0.006;
    private static final Map<String, Quantity> BASES = Map.ofEntries(Map.entry("mV", Quantity.of(1e-3, "V")),
            Map.entry("mA", Quantity.of(1e-3, "A")), Map.entry("kA", Quantity.of(1e3, "A")),
            Map.entry("mohm", Quantity.of(1e-3, "ohm")), Map.entry("m\u03A9", Quantity.of(1e-3, "ohm")),
            Map.entry("\u03A9", Quantity.of(1, "ohm")), Map.entry("ms", Quantity.of(1e-3, "s")),
            Map.entry("mm", Quantity.of(1e-3, "m")), Map.entry("kW", Quantity.of(1e3, "W")),
            Map.entry("mW", Quantity.of(1e-3, "W")), Map.entry("g", Quantity.of(1e-3, "kg")),
            Map.entry("1", Quantity.of(100, "%")), Map.entry("\u00B0C", Quantity.of(1, "degC")),
            Map.entry("mm\u00B2", Quantity.of(1, "mm2")));

    /** A figure of an element in the latest analysis. */
    public static FigureQuestion live(String element, Quantity wanted) {
        return new FigureQuestion(null, element, null, wanted);
    }

    /** The derivation of the figure wanted: the nearest of the same dimension; null when none is near. */
    public Derivation answer(List<Derivation> derivations) {
        Derivation best = null;
        double least = SHOWN;
        for (Derivation each : derivations) {
            double off = wanted == null ? Double.NaN : off(each.value(), wanted);
            if (off <= least) {
                best = each;
                least = off;
            }
        }
        return best;
    }

    /** How far two figures are apart as a share of the larger, whatever their signs; NaN for figures of different dimension. */
    private static double off(Quantity a, Quantity b) {
        Quantity one = base(a);
        Quantity other = base(b);
        if (!one.unit().equals(other.unit())) {
            return Double.NaN;
        }
        double larger = StrictMath.max(StrictMath.abs(one.value()), StrictMath.abs(other.value()));
        return larger == 0 ? 0 : StrictMath.abs(StrictMath.abs(one.value()) - StrictMath.abs(other.value())) / larger;
    }

    private static Quantity base(Quantity quantity) {
        Quantity base = BASES.get(quantity.unit());
        return base == null ? quantity : Quantity.of(quantity.value() * base.value(), base.unit());
    }
}
