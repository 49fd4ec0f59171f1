// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.StockLengths;
import org.loomwright.engine.choice.ChoiceProblem;
import org.loomwright.engine.heat.Copper;
import org.loomwright.engine.result.Quantity;

/** Costs, ties and kinds of the options, as an objective wants them. */
final class Objectives {
    private final Plan plan;
    private final OpenItems open;
    private final SizingOptions options;
    private final Map<List<Object>, Integer> kinds = new LinkedHashMap<>();

    Objectives(Plan plan, OpenItems open, SizingOptions options) {
        this.plan = plan;
        this.open = open;
        this.options = options;
    }

    /** Copper of an item with an option, kg. */
    double copperKg(int item, int option) {
        double sum = 0;
        for (int w : open.isCable(item) ? open.cable(item).cables() : List.<Integer>of()) {
            Plan.Cable cable = plan.cables().get(w);
            sum += open.cable(item).options().get(option).sectionMm2() * StrictMath.max(1, cable.cores()) * cable.lengthMm()
                    * 1e-6 * Copper.DENSITY_KG_PER_DM3;
        }
        return sum;
    }

    /** Price of an item with an option; NaN when the part states none. */
    double money(int item, int option) {
        if (!open.isCable(item)) {
            return open.way(item).options().get(option).price();
        }
        return open.cable(item).options().get(option).pricePerM() * metres(item);
    }

    private double metres(int item) {
        return open.cable(item).cables().stream().mapToDouble(w -> plan.cables().get(w).lengthMm()).sum() / 1000;
    }

    /** An item as the objective sees it. A protector of unknown price counts as free, a cable of unknown price is not on offer. */
    ChoiceProblem.Item item(int item, Struck struck) {
        List<ChoiceProblem.Option> list = new ArrayList<>();
        for (int o = 0; o < open.options(item); o++) {
            double money = money(item, o);
            boolean cable = open.isCable(item);
            double cost = switch (options.objective()) {
                case COPPER, SECTIONS -> copperKg(item, o);
                case PRICE -> Double.isNaN(money) ? 0 : money;
                case STOCK -> cable && !Double.isNaN(money) ? money : 0;
            };
            if (cable && Double.isNaN(money) && (options.objective() == SizingObjective.PRICE
                    || options.objective() == SizingObjective.STOCK)) {
                struck.strike(item, o, new Constraint("no price", open.id(item), null,
                        Quantity.of(open.cable(item).options().get(o).sectionMm2(), "mm2")));
            }
            double tie = options.objective() == SizingObjective.COPPER ? Double.isNaN(money) ? 0 : money : copperKg(item, o);
            list.add(new ChoiceProblem.Option(label(item, o), cost, tie, cable ? kind(item, o) : -1, cable ? metres(item) : 0));
        }
        return new ChoiceProblem.Item(open.id(item), list);
    }

    private String label(int item, int option) {
        return open.isCable(item) ? open.cable(item).options().get(option).sectionMm2() + " mm2"
                : open.way(item).options().get(option).part();
    }

    private int kind(int item, int option) {
        double mm2 = open.cable(item).options().get(option).sectionMm2();
        if (options.objective() != SizingObjective.STOCK) {
            return number(List.of(mm2));
        }
        Plan.Cable cable = plan.cables().get(open.cable(item).cables().get(0));
        return number(List.of(String.valueOf(cable.part()), mm2, colour(item)));
    }

    /** Colour of single cores; cables with several cores are bought by section only. */
    private String colour(int item) {
        List<Integer> cores = open.cable(item).conductors();
        return plan.cables().get(open.cable(item).cables().get(0)).cores() > 1 ? ""
                : Objects.toString(plan.conductors().get(cores.get(0)).colour(), "");
    }

    private int number(List<Object> key) {
        return kinds.computeIfAbsent(key, k -> kinds.size());
    }

    ChoiceProblem.Objective objective() {
        if (options.objective() == SizingObjective.SECTIONS) {
            Set<Integer> anyway = new HashSet<>();
            for (int c = 0; c < plan.conductors().size(); c++) {
                Plan.Cable cable = plan.cables().get(plan.conductors().get(c).cable());
                if (open.ofConductor(c) < 0 && !cable.existing()) {
                    anyway.add(number(List.of(plan.conductors().get(c).sectionMm2())));
                }
            }
            return new ChoiceProblem.FewestKinds(anyway);
        }
        if (options.objective() == SizingObjective.STOCK) {
            Map<Integer, Double> free = new LinkedHashMap<>();
            for (StockLengths.Length length : options.stock()) {
                free.merge(number(List.of(length.part(), length.sectionMm2(), Objects.toString(length.colour(), ""))),
                        length.lengthMm() / 1000, Double::sum);
            }
            return new ChoiceProblem.FreePools(free);
        }
        return new ChoiceProblem.LeastCost();
    }

    /** Totals of a choice. */
    SizingResult.Totals totals(int[] choice) {
        double kg = 0;
        double money = 0;
        Set<Double> sections = new HashSet<>();
        for (int i = 0; i < choice.length; i++) {
            kg += copperKg(i, choice[i]);
            double price = money(i, choice[i]);
            money += Double.isNaN(price) && !open.isCable(i) ? 0 : price;
            if (open.isCable(i)) {
                sections.add(open.cable(i).options().get(choice[i]).sectionMm2());
            }
        }
        return new SizingResult.Totals(kg, money, sections.size());
    }
}
