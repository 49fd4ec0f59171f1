// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/**
 * Which loads a source can reach when switches stand in a certain way. Generous where only a solved network could tell:
 * thresholds count as on, every source as able to deliver, and a coil pulls in once both its sides are reached.
 */
final class Reach {
    private final Plan plan;
    private final DisjointSets fixed;

    Reach(Plan plan) {
        this.plan = plan;
        fixed = FixedJoins.of(plan);
        for (Plan.Element element : plan.elements()) {
            if (element instanceof Plan.Diode diode) {
                fixed.join(diode.a(), diode.b());
            }
        }
    }

    /**
     * How the switches stand.
     *
     * @param handClosed whether each hand contact (index in elements) is closed
     */
    record Stand(String ignition, boolean engineRunning, boolean[] handClosed) {

        /** True when a contact that no coil drives is closed. */
        boolean closed(Plan.Contact contact, int index) {
            return switch (contact.driver()) {
                case "hand" -> handClosed[index];
                case "accessory" -> ("accessory".equals(ignition) || "on".equals(ignition)) != contact.restClosed();
                case "ignition" -> ("on".equals(ignition) || "start".equals(ignition)) != contact.restClosed();
                case "start" -> "start".equals(ignition) != contact.restClosed();
                case "engine" -> engineRunning != contact.restClosed();
                default -> true;
            };
        }
    }

    /** Loads (index in elements) that some source reaches on both sides, however the switches stand. */
    boolean[] ever() {
        DisjointSets sets = new DisjointSets(fixed);
        for (Plan.Element element : plan.elements()) {
            if (element instanceof Plan.Contact contact) {
                sets.join(contact.a(), contact.b());
            }
        }
        return supplied(sets, new Sides(plan, sets));
    }

    /** Loads (index in elements) that some source reaches on both sides in that stand. */
    boolean[] in(Stand stand) {
        DisjointSets sets = new DisjointSets(fixed);
        List<Plan.Contact> waiting = new ArrayList<>();
        for (int e = 0; e < plan.elements().size(); e++) {
            if (plan.elements().get(e) instanceof Plan.Contact contact) {
                if ("coil".equals(contact.driver()) && !contact.restClosed()) {
                    waiting.add(contact);
                } else if (stand.closed(contact, e)) {
                    sets.join(contact.a(), contact.b());
                }
            }
        }
        Sides sides = new Sides(plan, sets);
        while (pullIn(waiting, sets, sides)) {
            sides = new Sides(plan, sets);
        }
        return supplied(sets, sides);
    }

    private boolean pullIn(List<Plan.Contact> waiting, DisjointSets sets, Sides sides) {
        boolean any = false;
        for (Iterator<Plan.Contact> all = waiting.iterator(); all.hasNext();) {
            Plan.Contact contact = all.next();
            Plan.Coil coil = (Plan.Coil) plan.elements().get(contact.drivenBy());
            if (sides.across(coil.a(), coil.b())) {
                sets.join(contact.a(), contact.b());
                all.remove();
                any = true;
            }
        }
        return any;
    }

    private boolean[] supplied(DisjointSets sets, Sides sides) {
        boolean[] supplied = new boolean[plan.elements().size()];
        for (int e = 0; e < supplied.length; e++) {
            supplied[e] = plan.elements().get(e) instanceof Plan.Demand demand && sides.across(demand.a(), demand.b());
        }
        return supplied;
    }

    /** Which sets hold the plus side of a source, and which a minus side or structure. */
    private static final class Sides {
        private final boolean[] plus;
        private final boolean[] minus;

        Sides(Plan plan, DisjointSets sets) {
            int terminals = plan.terminals().size();
            boolean[] atPlus = new boolean[terminals + plan.bodies().size()];
            boolean[] atMinus = new boolean[atPlus.length];
            for (int body = terminals; body < atMinus.length; body++) {
                atMinus[sets.find(body)] = true;
            }
            for (Plan.Element element : plan.elements()) {
                if (element instanceof Plan.Cell cell) {
                    atPlus[sets.find(cell.a())] = true;
                    atMinus[sets.find(cell.b())] = true;
                } else if (element instanceof Plan.Regulated source) {
                    atPlus[sets.find(source.a())] = true;
                    atMinus[sets.find(source.b())] = true;
                } else if (element instanceof Plan.Converter converter) {
                    atPlus[sets.find(converter.outA())] = true;
                    atMinus[sets.find(converter.outB())] = true;
                }
            }
            plus = new boolean[terminals];
            minus = new boolean[terminals];
            for (int t = 0; t < terminals; t++) {
                plus[t] = atPlus[sets.find(t)];
                minus[t] = atMinus[sets.find(t)];
            }
        }

        boolean across(int a, int b) {
            return plus[a] && minus[b] || plus[b] && minus[a];
        }
    }
}
