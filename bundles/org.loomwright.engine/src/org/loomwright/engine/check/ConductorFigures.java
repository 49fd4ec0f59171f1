// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.heat.Copper;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.StudyResult.ElementFigures;

/** How the figures of a conductor come about: length and resistance once, current, temperature, rating and drop in each case. */
final class ConductorFigures {
    private final CheckContext context;

    ConductorFigures(CheckContext context) {
        this.context = context;
    }

    /** The figures of a conductor (index in the plan). */
    List<ElementFigures> of(int conductor) {
        String id = context.names().conductor(conductor);
        List<ElementFigures> figures = new ArrayList<>();
        figures.add(new ElementFigures(id, null, List.of(length(conductor), cold(conductor))));
        for (SolvedCase solved : context.cases()) {
            int item = solved.running().at().conductorItem()[conductor];
            if (item < 0) {
                continue;
            }
            List<Derivation> derivations = new ArrayList<>();
            ConductorRating rating = solved.ratings().get(conductor);
            if (!Double.isNaN(rating.tableA())) {
                derivations.add(RatingDerivation.of(context.plan(), conductor, rating));
                derivations.add(temperature(solved, conductor, rating));
            }
            if (solved.running().point().network().items().get(item) instanceof Network.Wire wire) {
                derivations.add(warm(solved, conductor, wire));
                derivations.add(drop(solved, conductor, wire));
            }
            figures.add(new ElementFigures(id, solved.state().name(), derivations));
        }
        return figures;
    }

    private Derivation length(int conductor) {
        Plan.Cable cable = cable(conductor);
        Plan.LengthParts parts = cable.lengthParts();
        Quantity length = Quantity.of(cable.lengthMm(), "mm");
        if (!Double.isNaN(parts.measuredMm())) {
            return new Derivation("length", length, "as measured",
                    List.of(new Input("measured", Quantity.of(parts.measuredMm(), "mm"), cable.id())), "given by a person");
        }
        return new Derivation("length", length, "path + tail a + tail b + slack",
                List.of(new Input("path", Quantity.of(parts.pathMm(), "mm"), runs(cable)),
                        new Input("tail a", Quantity.of(parts.tailAMm(), "mm"), "cable, or length.tail of the practice"),
                        new Input("tail b", Quantity.of(parts.tailBMm(), "mm"), "cable, or length.tail of the practice"),
                        new Input("slack", Quantity.of(parts.slackMm(), "mm"), "length.slack of the practice")),
                "shortest way on the runs unless a person fixed it");
    }

    private Derivation cold(int conductor) {
        Plan.Conductor core = context.plan().conductors().get(conductor);
        Plan.Cable cable = cable(conductor);
        return new Derivation("resistance at 20 degC", Quantity.of(core.r20MaxOhmPerM() * cable.lengthMm(), "mohm"),
                "R20' x length",
                List.of(new Input("R20'", Quantity.of(1000 * core.r20MaxOhmPerM(), "mohm/m"),
                        cable.part() + ", " + cable.partSource()),
                        new Input("length", Quantity.of(cable.lengthMm(), "mm"), cable.id()),
                        new Input("section", Quantity.of(core.sectionMm2(), "mm2"), cable.id())),
                "largest resistance that the cable's standard permits");
    }

    private Derivation temperature(SolvedCase solved, int conductor, ConductorRating rating) {
        return new Derivation("temperature", Quantity.of(solved.running().conductorC(conductor), "degC"),
                "I^2 R(T) = (T - Ta) Iz^2 R(Tmax) / (Tmax - Tref), solved for T; the peak of the cycle where loads come and go",
                List.of(new Input("I", Quantity.of(StrictMath.abs(solved.running().conductorA(conductor)), "A"),
                        "operating point of the case"),
                        new Input("Iz at Tref", Quantity.of(rating.atReferenceA(), "A"), rating.source()),
                        new Input("Ta", Quantity.of(rating.ambientC(), "degC"), "hottest zone along it in the case"),
                        new Input("Tref", Quantity.of(rating.referenceC(), "degC"), rating.source()),
                        new Input("Tmax", Quantity.of(rating.maxC(), "degC"), rating.source())),
                "heat balance that the published rating implies");
    }

    private Derivation warm(SolvedCase solved, int conductor, Network.Wire wire) {
        double temperatureC = solved.running().conductorC(conductor);
        return new Derivation("resistance with joints", Quantity.of(1000 * WireOhm.of(wire, temperatureC), "mohm"),
                "R20 x (1 + alpha x (T - 20)) + Rjoints",
                List.of(new Input("R20", Quantity.of(1000 * wire.r20Ohm(), "mohm"), context.names().conductor(conductor)),
                        new Input("alpha", Quantity.of(Copper.ALPHA_PER_K, "1/K"), "IEC 60028"),
                        new Input("T", Quantity.of(temperatureC, "degC"), "operating point of the case"),
                        new Input("Rjoints", Quantity.of(1000 * wire.jointsOhm(), "mohm"), "joint.end limits of the practice")),
                "IEC 60028");
    }

    private Derivation drop(SolvedCase solved, int conductor, Network.Wire wire) {
        double amps = StrictMath.abs(solved.running().conductorA(conductor));
        double ohm = WireOhm.of(wire, solved.running().conductorC(conductor));
        return new Derivation("voltage lost", Quantity.of(amps * ohm, "V"), "I x R",
                List.of(new Input("I", Quantity.of(amps, "A"), "operating point of the case"),
                        new Input("R", Quantity.of(1000 * ohm, "mohm"), "resistance with joints")),
                "Ohm's law");
    }

    private String runs(Plan.Cable cable) {
        return cable.path().isEmpty() ? "no run" : String.join(" ", cable.path().stream()
                .map(run -> context.plan().runs().get(run).id()).toList());
    }

    private Plan.Cable cable(int conductor) {
        return context.plan().cables().get(context.plan().conductors().get(conductor).cable());
    }
}
