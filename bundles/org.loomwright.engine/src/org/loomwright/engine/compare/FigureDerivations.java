// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.heat.Copper;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Quantity;

/** How the sums of an arrangement came about. */
public final class FigureDerivations {
    private static final String COUNTED = "counted; existing wiring and what all arrangements share are left out";
    private static final String LIBRARY = "prices and masses of the libraries";
    private final ArrangementFigures figures;

    private FigureDerivations(ArrangementFigures figures) {
        this.figures = figures;
    }

    /** The derivations of all sums, in the order of reports. */
    public static List<Derivation> of(ArrangementFigures figures) {
        FigureDerivations all = new FigureDerivations(figures);
        List<Derivation> list = new ArrayList<>(List.of(all.copper(), all.volume(), all.duties(), all.metres(), all.largest(),
                all.counted("different sections", figures.metresBySection().size(), "of new conductors"),
                all.counted("cables", figures.cables(), COUNTED), all.joints(),
                all.counted("devices", figures.devices(), COUNTED), all.counted("boxes and holders", figures.boxes(), COUNTED),
                all.counted("fuses and breakers", figures.protectors(), "fitted in their ways"), all.spareWays(), all.area(),
                all.mass(), all.price()));
        if (figures.weakest() != null) {
            list.add(all.weakest());
        }
        if (figures.hottest() != null) {
            list.add(all.hottest());
        }
        figures.findings().forEach((severity, number) -> list.add(all.counted(severity.slug() + "s", number,
                "findings of the check that nobody accepted")));
        figures.voltages().forEach(load -> list.add(all.voltage(load)));
        return list;
    }

    private Derivation copper() {
        List<Derivation.Input> inputs = new ArrayList<>();
        figures.metresBySection().forEach((section, metres) -> inputs.add(
                input("length of " + Quantity.of(section, "mm2"), metres, "m", COUNTED)));
        inputs.add(input("density", Copper.DENSITY_KG_PER_DM3, "kg/dm3", "IEC 60028, annealed copper at 20 degC"));
        return new Derivation("copper", Quantity.of(figures.copperKg(), "kg"), "density x sum of (section x length)", inputs,
                "mass of a prism");
    }

    private Derivation volume() {
        return new Derivation("copper, volume", Quantity.of(figures.copperDm3(), "dm3"), "mass / density", List.of(
                input("mass", figures.copperKg(), "kg", "copper"),
                input("density", Copper.DENSITY_KG_PER_DM3, "kg/dm3", "IEC 60028, annealed copper at 20 degC")),
                "mass of a prism");
    }

    private Derivation largest() {
        return new Derivation("largest section", Quantity.of(figures.largestMm2(), "mm2"), "largest of new conductors", List.of(
                input("different sections", figures.metresBySection().size(), "1", COUNTED)), "sections of the plan");
    }

    private Derivation counted(String figure, double number, String what) {
        return new Derivation(figure, Quantity.of(number, "1"), "counted", List.of(input("number", number, "1", what)),
                "the arrangement as it is planned");
    }

    private Derivation spareWays() {
        return new Derivation("spare ways", Quantity.of(figures.spareWays(), "1"), "ways - fuses and breakers", List.of(
                input("boxes and holders", figures.boxes(), "1", COUNTED),
                input("their ways", figures.spareWays() + (double) figures.protectors(), "1", "parts of the libraries"),
                input("fuses and breakers", figures.protectors(), "1", "fitted in their ways")), "counted");
    }

    private Derivation voltage(ArrangementFigures.LoadVoltage load) {
        return new Derivation("lowest voltage of " + load.load(), Quantity.of(load.volts(), "V"), "least over cases of U",
                List.of(input("U", load.volts(), "V", "case " + load.caseName())), "operating points of all cases");
    }

    private Derivation duties() {
        List<Derivation.Input> inputs = new ArrayList<>();
        figures.copperKgByDuty().forEach((duty, kg) -> inputs.add(input(duty.words(), kg, "kg", switch (duty) {
            case FEEDER, FEEDER_RETURN -> "currents of several loads pass in some case";
            case BRANCH, BRANCH_RETURN -> "the current of one load passes";
            case OTHER -> "no load's current passes";
        })));
        return new Derivation("copper by duty", Quantity.of(figures.copperKg(), "kg"),
                "sum of feeders, branches, their returns and the rest", inputs, "paths of the currents in all cases");
    }

    private Derivation metres() {
        List<Derivation.Input> inputs = new ArrayList<>();
        figures.metresByDuty().forEach((duty, metres) -> inputs.add(input(duty.words(), metres, "m", COUNTED)));
        return new Derivation("conductor laid", Quantity.of(figures.conductorM(), "m"),
                "sum of (length of the cable x its cores)", inputs, "lengths of the plan, tails and slack included");
    }

    private Derivation mass() {
        return new Derivation("mass", Quantity.of(figures.massKg().known(), "kg"),
                "sum of (mass per metre x length) of cables and of the devices' masses", List.of(
                        input("parts without a stated mass", figures.massKg().unknown(), "1", "left out")), LIBRARY);
    }

    private Derivation price() {
        List<Derivation.Input> inputs = new ArrayList<>();
        for (Map.Entry<ArrangementFigures.Priced, Tally> each : figures.price().entrySet()) {
            inputs.add(input(each.getKey().words(), each.getValue().known(), "money", each.getValue().complete() ? LIBRARY
                    : each.getValue().unknown() + " without a price left out"));
        }
        return new Derivation("price", Quantity.of(figures.totalPrice().known(), "money"),
                "sum of (price per metre x length) of cables and of the prices of devices, protectors and named ends", inputs,
                LIBRARY);
    }

    private Derivation area() {
        return new Derivation("mounting area", Quantity.of(figures.areaCm2().known(), "cm2"), "sum of (length x width)", List.of(
                input("boxes and holders", figures.boxes(), "1", COUNTED),
                input("of them without a stated size", figures.areaCm2().unknown(), "1", "left out")), "sizes of the libraries");
    }

    private Derivation joints() {
        return new Derivation("conductor ends", Quantity.of(figures.joints(), "1"), "2 x connected cores of new cables",
                List.of(input("cables", figures.cables(), "1", COUNTED)), "common practice");
    }

    private Derivation weakest() {
        ArrangementFigures.LoadVoltage load = figures.weakest();
        return new Derivation("lowest voltage", Quantity.of(100 * load.volts() / load.nominalV(), "%"),
                "least over loads and cases of U / Un", List.of(input("U", load.volts(), "V", load.load() + ", case "
                        + load.caseName()), input("Un", load.nominalV(), "V", "level of the load")),
                "operating points of all cases");
    }

    private Derivation hottest() {
        ArrangementFigures.HotConductor hot = figures.hottest();
        return new Derivation("hottest conductor", Quantity.of(hot.hotC(), "degC"), "highest over new conductors and cases",
                List.of(input("its class", hot.maxC(), "degC", hot.conductor() + ", case " + hot.caseName())),
                "operating points of all cases");
    }

    private static Derivation.Input input(String name, double value, String unit, String origin) {
        return new Derivation.Input(name, Quantity.of(value, unit), origin);
    }
}
