// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The states that the engine adds to the user's, because mistakes hide in them. Temperatures, charges and speeds are the
 * practice's
 * {@code state.*} limits.
 *
 * <ul>
 * <li>{@code engine:all-on}: everything that may be on at once. Ignition on, engine idling, hottest ambients, batteries
 * full, hand switches closed.</li>
 * <li>{@code engine:cranking}: ignition at start, cold batteries, the starter, and those loads of the base vehicle that a
 * cranking
 * case of the user lists; without one, those that have a supply while the ignition stands at start and hand switches rest.</li>
 * <li>{@code engine:parked-cold}: ignition off, coldest ambients, only standby currents.</li>
 * <li>{@code engine:charging-hot}: engine at charging speed, full sun, hottest ambients, batteries low, only standby currents:
 * the charging sources at their limits.</li>
 * <li>{@code engine:charging-resting}: ignition on, engine and other charging sources resting, the working loads (all but
 * the base
 * vehicle's) on, batteries at rest charge.</li>
 * </ul>
 *
 * A load is wanted in such a state unless the ignition, the engine or a switch that rests keeps it off; a load without any
 * supply, however the switches stand, is wanted, so that the want shows. Hand switches that rest open are closed where loads
 * are wanted;
 * other devices with hand contacts (isolators, links) and change-over switches rest.
 */
final class EngineCases {
    private final Plan plan;
    private final List<Plan.Case> users;
    private final Reach reach;
    private final boolean[] ever;

    private EngineCases(Plan plan, List<Plan.Case> users) {
        this.plan = plan;
        this.users = users;
        reach = new Reach(plan);
        ever = reach.ever();
    }

    /** The engine's cases for a plan. */
    static List<Plan.Case> of(Plan plan, List<Plan.Case> users) {
        EngineCases cases = new EngineCases(plan, users);
        return List.of(cases.allOn(), cases.cranking(), cases.parkedCold(), cases.chargingHot(), cases.chargingResting());
    }

    private Plan.Case allOn() {
        CaseDraft draft = draft("engine:all-on", "working", "on");
        draft.engineRunning = true;
        draft.engineRpm = plan.practice().value("state.idle-rpm");
        closeSwitches(draft);
        allowed(draft).forEach(draft::on);
        return draft.build();
    }

    private Plan.Case cranking() {
        CaseDraft draft = draft("engine:cranking", "cranking", "start");
        double coldC = plan.practice().value("state.crank-temperature");
        draft.outsideC = coldC;
        for (int z = 0; z < draft.ambientC.length; z++) {
            Plan.Zone zone = plan.zones().get(z);
            draft.ambientC[z] = StrictMath.max(zone.ambientMinC(), StrictMath.min(zone.ambientMaxC(), coldC));
        }
        draft.allCellsAt(coldC);
        draft.allCharged(plan.practice().value("state.crank-charge"));
        draft.crank();
        List<Plan.Case> byUser = users.stream().filter(of -> "cranking".equals(of.kind())).toList();
        for (Plan.Case of : byUser) {
            of.demands().stream().filter(state -> isBase(state.demand())).forEach(draft::on);
        }
        if (byUser.isEmpty()) {
            boolean[] supplied = reach.in(draft.stand());
            for (int e = 0; e < supplied.length; e++) {
                if (supplied[e] && isBase(e) && !draft.isStarter(e)) {
                    draft.on(e);
                }
            }
        }
        return draft.build();
    }

    private Plan.Case parkedCold() {
        CaseDraft draft = draft("engine:parked-cold", "parked", "off");
        draft.outsideC = plan.practice().value("state.cold");
        for (int z = 0; z < draft.ambientC.length; z++) {
            draft.ambientC[z] = plan.zones().get(z).ambientMinC();
        }
        draft.allCharged(plan.practice().value("state.cold-charge"));
        return draft.build();
    }

    private Plan.Case chargingHot() {
        CaseDraft draft = draft("engine:charging-hot", "charging", "on");
        draft.engineRunning = true;
        draft.engineRpm = plan.practice().value("state.charge-rpm");
        draft.sun = 1;
        draft.allCharged(plan.practice().value("state.rest-charge"));
        return draft.build();
    }

    private Plan.Case chargingResting() {
        CaseDraft draft = draft("engine:charging-resting", "working", "on");
        draft.allCharged(plan.practice().value("state.rest-charge"));
        closeSwitches(draft);
        allowed(draft).stream().filter(e -> !isBase(e)).forEach(draft::on);
        return draft.build();
    }

    private CaseDraft draft(String id, String kind, String ignition) {
        CaseDraft draft = new CaseDraft(plan, id);
        draft.byEngine = true;
        draft.kind = kind;
        draft.ignition = ignition;
        return draft;
    }

    private List<Integer> allowed(CaseDraft draft) {
        boolean[] supplied = reach.in(draft.stand());
        List<Integer> allowed = new ArrayList<>();
        for (int e = 0; e < supplied.length; e++) {
            if (plan.elements().get(e) instanceof Plan.Demand && (supplied[e] || !ever[e])) {
                allowed.add(e);
            }
        }
        return allowed;
    }

    private boolean isBase(int element) {
        return plan.devices().get(plan.elements().get(element).device()).existing();
    }

    /** Closes the hand contacts of switches, those of change-over switches excepted. */
    private void closeSwitches(CaseDraft draft) {
        Set<Integer> changeOver = new HashSet<>();
        Set<Integer> closedAt = new HashSet<>();
        for (boolean second : new boolean[] {false, true}) {
            for (Plan.Element element : plan.elements()) {
                if (element instanceof Plan.Contact contact && "hand".equals(contact.driver())) {
                    if (!second && contact.restClosed()) {
                        closedAt.add(contact.a());
                        closedAt.add(contact.b());
                    } else if (second && (closedAt.contains(contact.a()) || closedAt.contains(contact.b()))) {
                        changeOver.add(contact.device());
                    }
                }
            }
        }
        for (int e = 0; e < draft.closed.length; e++) {
            if (plan.elements().get(e) instanceof Plan.Contact contact && "hand".equals(contact.driver())
                    && "switch".equals(plan.devices().get(contact.device()).kind())
                    && !changeOver.contains(contact.device())) {
                draft.closed[e] = true;
            }
        }
    }
}
