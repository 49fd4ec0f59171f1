// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.heat.Copper;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Quantity;

/** How the totals of a sizing, its proof and what limits cost came about. */
public final class SizingDerivations {
    private static final String DENSITY = "IEC 60028, annealed copper at 20 degC";
    private static final String PRICES = "prices of the libraries";
    private final SizingResult result;
    private final Map<String, Plan.Cable> cables = new HashMap<>();

    private SizingDerivations(SizingResult result) {
        this.result = result;
        result.plan().cables().forEach(cable -> cables.put(cable.id(), cable));
    }

    /** Totals before and after, of each cable on its own, the proof, and what was saved. */
    public static List<Derivation> of(SizingResult result) {
        SizingDerivations all = new SizingDerivations(result);
        List<Derivation> list = new ArrayList<>();
        if (!Double.isNaN(result.before().copperKg())) {
            list.add(all.copper("copper before", result.before().copperKg(), SizingResult.SizedCable::beforeMm2));
        }
        list.add(all.copper("copper after", result.after().copperKg(), SizingResult.SizedCable::afterMm2));
        if (!Double.isNaN(result.before().money())) {
            list.add(all.price("price before", result.before().money(), true));
        }
        list.add(all.price("price after", result.after().money(), false));
        list.add(all.sections());
        if (result.alone() != null) {
            list.addAll(all.alone());
        }
        list.addAll(all.proof());
        return list;
    }

    /** What the limits of one load cost. */
    public static List<Derivation> of(SizingResult result, SizingResult.LimitCost cost) {
        double kg = result.after().copperKg();
        Input after = new Input("with all limits", Quantity.of(kg, "kg"), "copper after");
        String again = "the same problem of choice solved again";
        return List.of(
                new Derivation("copper saved without the limit", Quantity.of(cost.wholeKg(), "kg"), "with - without", List.of(
                        after, new Input("without", Quantity.of(kg - cost.wholeKg(), "kg"), again),
                        new Input("limit", cost.limit(), cost.element())), "branch and bound"),
                new Derivation("copper saved by 1 % more", Quantity.of(cost.pointKg(), "kg"), "with - loosened", List.of(after,
                        new Input("loosened by 1 % of nominal voltage", Quantity.of(kg - cost.pointKg(), "kg"), again)),
                        "branch and bound"),
                new Derivation("price saved by 1 % more", Quantity.of(cost.pointMoney(), "money"), "with - loosened", List.of(
                        new Input("with all limits", Quantity.of(result.after().money(), "money"), "price after"),
                        new Input("loosened by 1 % of nominal voltage",
                                Quantity.of(result.after().money() - cost.pointMoney(), "money"), again)), "branch and bound"));
    }

    private Derivation copper(String figure, double kg, ToDoubleFunction<SizingResult.SizedCable> section) {
        Map<Double, Double> metres = new TreeMap<>();
        for (SizingResult.SizedCable cable : result.cables()) {
            metres.merge(section.applyAsDouble(cable),
                    StrictMath.max(1, cables.get(cable.id()).cores()) * cable.lengthMm() / 1000, Double::sum);
        }
        List<Input> inputs = new ArrayList<>();
        metres.forEach((mm2, m) -> inputs.add(new Input("conductor of " + Quantity.of(mm2, "mm2"), Quantity.of(m, "m"),
                "cables whose section was open")));
        inputs.add(new Input("density", Quantity.of(Copper.DENSITY_KG_PER_DM3, "kg/dm3"), DENSITY));
        return new Derivation(figure, Quantity.of(kg, "kg"), "density x sum of (section x length)", inputs, "mass of a prism");
    }

    private Derivation price(String figure, double money, boolean before) {
        Map<String, Double> sums = new LinkedHashMap<>();
        for (SizingResult.SizedCable sized : result.cables()) {
            Plan.Cable cable = cables.get(sized.id());
            double mm2 = before ? sized.beforeMm2() : sized.afterMm2();
            double perM = cable.options().stream().filter(option -> option.sectionMm2() == mm2)
                    .mapToDouble(Plan.SectionOption::pricePerM).findFirst().orElse(Double.NaN);
            sums.merge("cable " + cable.part(), perM * cable.lengthMm() / 1000, Double::sum);
        }
        List<Input> inputs = new ArrayList<>();
        double cable = 0;
        for (Map.Entry<String, Double> each : sums.entrySet()) {
            inputs.add(new Input(each.getKey(), Quantity.of(each.getValue(), "money"), PRICES));
            cable += each.getValue();
        }
        inputs.add(new Input("fuses and breakers", Quantity.of(money - cable, "money"), PRICES));
        return new Derivation(figure, Quantity.of(money, "money"),
                "sum of (price per metre x length) and of the protectors'", inputs, PRICES);
    }

    private Derivation sections() {
        return new Derivation("different sections", Quantity.of(result.after().sections(), "1"),
                "number of different sections chosen", List.of(new Input("before",
                        Quantity.of(result.before().sections(), "1"), "as it stood")), "counted");
    }

    private List<Derivation> alone() {
        double kg = result.alone().copperKg() - result.after().copperKg();
        double money = result.alone().money() - result.after().money();
        String parts = "each limit parted over the cables on its way by their lengths; the cheapest section within its parts";
        return List.of(
                new Derivation("copper, each cable alone", Quantity.of(result.alone().copperKg(), "kg"),
                        "density x sum of (section x length)", List.of(new Input("cables",
                                Quantity.of(result.cables().size(), "1"), parts)), "common practice"),
                new Derivation("copper saved", Quantity.of(kg, "kg"), "each alone - together", List.of(
                        new Input("each alone", Quantity.of(result.alone().copperKg(), "kg"), parts),
                        new Input("together", Quantity.of(result.after().copperKg(), "kg"), "copper after")), "difference"),
                new Derivation("price saved", Quantity.of(money, "money"), "each alone - together", List.of(
                        new Input("each alone", Quantity.of(result.alone().money(), "money"), parts),
                        new Input("together", Quantity.of(result.after().money(), "money"), "price after")), "difference"));
    }

    private List<Derivation> proof() {
        String unit = result.objective().unit();
        Quantity cost = Quantity.of(result.cost(), unit);
        Quantity bound = Quantity.of(result.bound(), unit);
        return List.of(
                new Derivation("bound", bound,
                        "least over the choices that branch and bound left open; the cost where none is left",
                        List.of(new Input("cost found", cost, result.objective().word()), new Input("rounds with the check",
                                Quantity.of(result.rounds(), "1"), "demands at the currents of the last round")),
                        "branch and bound over an elimination tree"),
                new Derivation("gap", Quantity.of(100 * result.gap(), "%"), "(cost - bound) / cost",
                        List.of(new Input("cost", cost, result.objective().word()), new Input("bound", bound, "see above")),
                        "definition"));
    }
}
