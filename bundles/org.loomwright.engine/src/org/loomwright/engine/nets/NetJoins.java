// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.nets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.engine.assembly.DisjointSets;
import org.loomwright.engine.assembly.FixedJoins;
import org.loomwright.engine.assembly.Plan;

/** Joins what can come to be one net, the doubtful joins last. */
final class NetJoins {
    private static final int PLUS = 1;
    private static final int MINUS = 2;

    private final Plan plan;
    private final DisjointSets sets;
    private final int[] sides;
    private final double[] nominalV;

    private NetJoins(Plan plan) {
        this.plan = plan;
        sets = FixedJoins.of(plan);
        sides = new int[plan.terminals().size() + plan.bodies().size()];
        nominalV = new double[sides.length];
    }

    /** Sets over the terminals of the plan, followed by its bodies. */
    static DisjointSets of(Plan plan) {
        NetJoins joins = new NetJoins(plan);
        joins.join();
        return joins.sets;
    }

    private void join() {
        Set<Plan.Contact> sharing = sharing();
        for (Plan.Element element : plan.elements()) {
            if (element instanceof Plan.Contact contact && !sharing.contains(contact)) {
                sets.join(contact.a(), contact.b());
            }
        }
        mark();
        for (boolean last : new boolean[] {false, true}) {
            for (Plan.Element element : plan.elements()) {
                if (element instanceof Plan.Contact contact && sharing.contains(contact)) {
                    joinUnlessOpposed(contact.a(), contact.b(), last);
                }
            }
        }
        for (Plan.Element element : plan.elements()) {
            if (element instanceof Plan.Diode diode
                    && !(sides[sets.find(diode.a())] == MINUS && sides[sets.find(diode.b())] == PLUS)) {
                joinMarked(diode.a(), diode.b());
            }
        }
    }

    /** Contacts that share a terminal with another one of their device. */
    private Set<Plan.Contact> sharing() {
        Map<Integer, List<Plan.Contact>> at = new HashMap<>();
        for (Plan.Element element : plan.elements()) {
            if (element instanceof Plan.Contact contact) {
                at.computeIfAbsent(contact.a(), terminal -> new ArrayList<>()).add(contact);
                at.computeIfAbsent(contact.b(), terminal -> new ArrayList<>()).add(contact);
            }
        }
        Set<Plan.Contact> sharing = new HashSet<>();
        at.values().stream().filter(together -> together.size() > 1).forEach(sharing::addAll);
        return sharing;
    }

    private void mark() {
        for (int body = plan.terminals().size(); body < sides.length; body++) {
            sides[sets.find(body)] |= MINUS;
        }
        for (Plan.Element element : plan.elements()) {
            if (element instanceof Plan.Cell cell) {
                mark(cell.a(), cell.b());
            } else if (element instanceof Plan.Regulated source) {
                mark(source.a(), source.b());
            } else if (element instanceof Plan.Converter converter) {
                mark(converter.outA(), converter.outB());
            }
        }
        for (Plan.Domain domain : plan.domains()) {
            if (domain.sourceTerminal() >= 0) {
                nominalV[sets.find(domain.sourceTerminal())] = domain.nominalV();
            }
        }
    }

    private void mark(int plus, int minus) {
        sides[sets.find(plus)] |= PLUS;
        sides[sets.find(minus)] |= MINUS;
    }

    /** Joins a change-over contact; a side that is minus waits for the last round, so that the common terminal goes to plus. */
    private void joinUnlessOpposed(int a, int b, boolean last) {
        int sideA = sides[sets.find(a)];
        int sideB = sides[sets.find(b)];
        boolean opposed = sideA == PLUS && sideB == MINUS || sideA == MINUS && sideB == PLUS;
        double voltA = nominalV[sets.find(a)];
        double voltB = nominalV[sets.find(b)];
        boolean twoVoltages = voltA > 0 && voltB > 0 && voltA != voltB;
        if (!opposed && !twoVoltages && (last || sideA != MINUS && sideB != MINUS)) {
            joinMarked(a, b);
        }
    }

    private void joinMarked(int a, int b) {
        int sideA = sides[sets.find(a)];
        int sideB = sides[sets.find(b)];
        double volts = StrictMath.max(nominalV[sets.find(a)], nominalV[sets.find(b)]);
        sets.join(a, b);
        sides[sets.find(a)] = sideA | sideB;
        nominalV[sets.find(a)] = volts;
    }
}
