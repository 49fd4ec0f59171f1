// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.DisjointSets;
import org.loomwright.engine.assembly.FixedJoins;
import org.loomwright.engine.assembly.Plan;

/**
 * How contacts stand when a fault happens. A contact that exists is closed some day, so each is taken as closed, whether or not
 * a case of the user closes it; otherwise nothing would be said of what lies behind it. Exceptions:
 *
 * <ul>
 * <li>Of a change-over (contacts of one drive that share a terminal) the working side is closed and the resting side open.
 * <li>A contact is left open when with all others it would short a source (two positions that exclude each other, as of a
 * reversing switch).
 * <li>Where batteries are to stand apart, the contact that would join two of them (through others) is left open. Isolators
 * and hand contacts that rest closed are closed before, so that the link is left open and not the isolator.
 * </ul>
 *
 * What was left open by the first two is closed in the other positions, and what excludes it is open there. Contacts of equal
 * standing are taken by their ids, so the order of elements does not matter.
 */
final class ContactPositions {
    private final Plan plan;
    private final boolean apart;
    private final boolean[] closed;
    private final boolean[] excluded;
    private final DisjointSets joined;
    private final double shortV;

    private ContactPositions(Plan plan, boolean apart) {
        this.plan = plan;
        this.apart = apart;
        closed = new boolean[plan.elements().size()];
        excluded = new boolean[closed.length];
        joined = FixedJoins.of(plan);
        double lowestV = Double.POSITIVE_INFINITY;
        for (Plan.Element element : plan.elements()) {
            if (element instanceof Plan.Diode diode) {
                joined.join(diode.a(), diode.b());
            }
            double volts = StrictMath.abs(volts(element));
            lowestV = volts > 0 ? StrictMath.min(lowestV, volts) : lowestV;
        }
        shortV = lowestV / 2;
    }

    /** All closed as far as they can be together; for each element whether it is a closed contact. */
    static boolean[] together(Plan plan) {
        return new ContactPositions(plan, false).settle(new boolean[plan.elements().size()]);
    }

    /** The same, but no contact joins two batteries. */
    static boolean[] apart(Plan plan) {
        return new ContactPositions(plan, true).settle(new boolean[plan.elements().size()]);
    }

    /** What {@link #together} leaves open closed, and what excludes it open; null when that leaves nothing open. */
    static boolean[] other(Plan plan) {
        ContactPositions first = new ContactPositions(plan, false);
        first.settle(new boolean[plan.elements().size()]);
        boolean any = false;
        for (boolean each : first.excluded) {
            any |= each;
        }
        return any ? new ContactPositions(plan, false).settle(first.excluded) : null;
    }

    private boolean[] settle(boolean[] wanted) {
        List<Integer> order = new ArrayList<>();
        for (int e = 0; e < closed.length; e++) {
            if (plan.elements().get(e) instanceof Plan.Contact) {
                order.add(e);
            }
        }
        Comparator<Integer> standing = Comparator
                .comparingInt(e -> (wanted[e] ? 0 : 10) + rank((Plan.Contact) plan.elements().get(e)));
        order.sort(standing.thenComparing(e -> plan.elements().get(e).id()));
        for (int e : order) {
            Plan.Contact contact = (Plan.Contact) plan.elements().get(e);
            if (opposed(e, contact) || shorts(contact)) {
                excluded[e] = true;
            } else if (!apart || !joinsBatteries(contact)) {
                closed[e] = true;
                joined.join(contact.a(), contact.b());
            }
        }
        return closed;
    }

    private static int rank(Plan.Contact contact) {
        int rest = contact.restClosed() ? 1 : 0;
        return switch (contact.driver()) {
            case "hand" -> contact.restClosed() ? 0 : 2;
            case "coil", "threshold" -> 6 + rest;
            default -> 4 + rest;
        };
    }

    /** Whether the other side of its change-over is closed already. */
    private boolean opposed(int e, Plan.Contact contact) {
        for (int other = 0; other < closed.length; other++) {
            if (closed[other] && other != e && plan.elements().get(other) instanceof Plan.Contact c
                    && c.device() == contact.device() && c.driver().equals(contact.driver()) && c.drivenBy() == contact.drivenBy()
                    && c.restClosed() != contact.restClosed()
                    && (c.a() == contact.a() || c.a() == contact.b() || c.b() == contact.a() || c.b() == contact.b())) {
                return true;
            }
        }
        return false;
    }

    /** Whether the two sides, joined so far by sources only, lie apart by a source's voltage. */
    private boolean shorts(Plan.Contact contact) {
        int from = joined.find(contact.a());
        int to = joined.find(contact.b());
        if (from == to) {
            return false;
        }
        Map<Integer, Double> potential = new LinkedHashMap<>();
        potential.put(from, 0.0);
        Deque<Integer> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty()) {
            int at = open.remove();
            for (Plan.Element element : plan.elements()) {
                double volts = volts(element);
                if (volts == 0) {
                    continue;
                }
                int plus = joined.find(plus(element));
                int minus = joined.find(minus(element));
                if (plus == at && potential.putIfAbsent(minus, potential.get(at) - volts) == null) {
                    open.add(minus);
                } else if (minus == at && potential.putIfAbsent(plus, potential.get(at) + volts) == null) {
                    open.add(plus);
                }
            }
        }
        return StrictMath.abs(potential.getOrDefault(to, 0.0)) > shortV;
    }

    private boolean joinsBatteries(Plan.Contact contact) {
        int from = joined.find(contact.a());
        int to = joined.find(contact.b());
        return from != to && hasBattery(from) && hasBattery(to);
    }

    private boolean hasBattery(int set) {
        return plan.elements().stream().anyMatch(e -> e instanceof Plan.Cell cell && joined.find(cell.a()) == set);
    }

    private static double volts(Plan.Element element) {
        return element instanceof Plan.Cell cell ? cell.nominalV()
                : element instanceof Plan.Converter converter ? converter.setV() : 0;
    }

    private static int plus(Plan.Element element) {
        return element instanceof Plan.Cell cell ? cell.a() : ((Plan.Converter) element).outA();
    }

    private static int minus(Plan.Element element) {
        return element instanceof Plan.Cell cell ? cell.b() : ((Plan.Converter) element).outB();
    }
}
