// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.loomwright.engine.assembly.Plan;

/** What sizing may choose: sections of cables (cores in parallel together) and ratings of protectors in ways. */
final class OpenItems {
    private final List<CableItem> cables;
    private final List<WayItem> ways;
    private final int[] itemOfConductor;
    private final int[] itemOfElement;

    /**
     * Cables that take one section.
     *
     * @param id         id of the first cable
     * @param cables     indexes in the plan, more than one for cables in parallel
     * @param conductors their cores
     * @param options    sections on offer, rising
     */
    record CableItem(String id, List<Integer> cables, List<Integer> conductors, List<Plan.SectionOption> options) {
    }

    /** A protector in a way: index in the plan's elements, protectors on offer with rising ratings. */
    record WayItem(String id, int element, List<Plan.ProtectorOption> options) {
    }

    private OpenItems(Plan plan, List<CableItem> cables, List<WayItem> ways) {
        this.cables = List.copyOf(cables);
        this.ways = List.copyOf(ways);
        itemOfConductor = new int[plan.conductors().size()];
        itemOfElement = new int[plan.elements().size()];
        java.util.Arrays.fill(itemOfConductor, -1);
        java.util.Arrays.fill(itemOfElement, -1);
        for (int i = 0; i < cables.size(); i++) {
            for (int c : cables.get(i).conductors()) {
                itemOfConductor[c] = i;
            }
        }
        for (int w = 0; w < ways.size(); w++) {
            itemOfElement[ways.get(w).element()] = cables.size() + w;
        }
    }

    static OpenItems of(Plan plan, SizingOptions options) {
        List<List<Integer>> conductors = new ArrayList<>();
        plan.cables().forEach(cable -> conductors.add(new ArrayList<>()));
        for (int c = 0; c < plan.conductors().size(); c++) {
            conductors.get(plan.conductors().get(c).cable()).add(c);
        }
        Map<Object, List<Integer>> together = new LinkedHashMap<>();
        for (int w = 0; w < plan.cables().size(); w++) {
            Plan.Cable cable = plan.cables().get(w);
            boolean free = !cable.existing() && (cable.chosenBySizing() || options.openPersonChoices());
            boolean oneSection = conductors.get(w).stream()
                    .allMatch(c -> plan.conductors().get(c).sectionMm2() == cable.sectionMm2());
            if (free && oneSection && !conductors.get(w).isEmpty() && !cable.options().isEmpty()) {
                together.computeIfAbsent(group(plan, w, conductors.get(w)), k -> new ArrayList<>()).add(w);
            }
        }
        List<CableItem> cables = new ArrayList<>();
        for (List<Integer> some : together.values()) {
            List<Integer> cores = some.stream().flatMap(w -> conductors.get(w).stream()).toList();
            Plan.Cable first = plan.cables().get(some.get(0));
            cables.add(new CableItem(first.id(), List.copyOf(some), cores, settled(first.options(),
                    Plan.SectionOption::sectionMm2, options.given().get(first.id()))));
        }
        List<WayItem> ways = new ArrayList<>();
        for (int e = 0; e < plan.elements().size(); e++) {
            if (plan.elements().get(e) instanceof Plan.Protector protector && protector.way() != null
                    && !protector.options().isEmpty() && (protector.chosenBySizing() || options.openPersonChoices())
                    && !plan.devices().get(protector.device()).existing()) {
                ways.add(new WayItem(protector.way(), e, settled(protector.options(), Plan.ProtectorOption::ratingA,
                        options.given().get(protector.way()))));
            }
        }
        return new OpenItems(plan, cables, ways);
    }

    /** The options of a figure that is settled, or all where it is not, or none has it. */
    private static <T> List<T> settled(List<T> options, ToDoubleFunction<T> figure, Double given) {
        List<T> only = given == null ? List.of() : options.stream().filter(each -> figure.applyAsDouble(each) == given).toList();
        return only.isEmpty() ? options : only;
    }

    /** Cables whose cores share a current by intent, and are of one part, take one section. */
    private static Object group(Plan plan, int cable, List<Integer> conductors) {
        for (int c : conductors) {
            Plan.Conductor core = plan.conductors().get(c);
            if (core.parallelGroup() != null) {
                return List.of(core.parallelGroup(), StrictMath.min(core.a(), core.b()), StrictMath.max(core.a(), core.b()),
                        Objects.toString(plan.cables().get(cable).part()));
            }
        }
        return cable;
    }

    List<CableItem> cables() {
        return cables;
    }

    List<WayItem> ways() {
        return ways;
    }

    int size() {
        return cables.size() + ways.size();
    }

    boolean isCable(int item) {
        return item < cables.size();
    }

    CableItem cable(int item) {
        return cables.get(item);
    }

    WayItem way(int item) {
        return ways.get(item - cables.size());
    }

    int options(int item) {
        return isCable(item) ? cable(item).options().size() : way(item).options().size();
    }

    String id(int item) {
        return isCable(item) ? cable(item).id() : way(item).id();
    }

    /** Item of a conductor, -1 when its section is not open. */
    int ofConductor(int conductor) {
        return itemOfConductor[conductor];
    }

    /** Item of a protector, -1 when its rating is not open. */
    int ofElement(int element) {
        return element < 0 ? -1 : itemOfElement[element];
    }
}
