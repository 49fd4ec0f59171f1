// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.CurvePair;
import org.loomwright.engine.protection.DeviceCurves;
import org.loomwright.engine.protection.FaultBranch;
import org.loomwright.engine.protection.Feed;
import org.loomwright.engine.protection.LoopShare;
import org.loomwright.engine.protection.ReturnDuty;
import org.loomwright.engine.protection.UnclearedFault;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Quantity;

/**
 * What the check says about a choice, as demands on later ones (a cutting-plane method: Kelley 1960). A thicker conductor and a
 * smaller protector are never worse for these rules, so where a choice fails, all that are thinner, or have larger protectors, are
 * ruled out with it.
 */
final class Cuts {
    private final OpenItems open;
    private final Design design;
    private final Map<String, Integer> itemOfId = new LinkedHashMap<>();

    Cuts(OpenItems open) {
        this.open = open;
        design = new Design(open);
        for (int i = 0; i < open.cables().size(); i++) {
            itemOfId.put(open.id(i), i);
        }
        for (OpenItems.WayItem way : open.ways()) {
            itemOfId.put(way.id(), open.ofElement(way.element()));
        }
    }

    Design design() {
        return design;
    }

    /** Looks at a choice and what the check found; true when something new was learnt. */
    boolean learn(CheckContext context, int[] choice, List<Finding> findings) {
        Set<String> before = state();
        for (UnclearedFault fault : context.protection().uncleared()) {
            clearing(context, fault);
        }
        for (Finding finding : findings) {
            switch (finding.rule()) {
                case "short-withstand", "return-protected", "device-rating", "overload-band" -> protectedBy(context, choice,
                        finding);
                case "fault-clears", "drop-class", "load-undervolt", "device-loading", "section-min", "terminal-fit" -> {
                    // they are sums or struck options, worked out anew in each round
                }
                case "inrush-margin" -> strikeUpTo(finding.element(), choice, finding);
                case "case-earth" -> caseEarth(context, finding, choice);
                case "breaking-capacity" -> breaking(finding, choice);
                case "selectivity" -> selective(finding, choice);
                default -> larger(context, choice, finding);
            }
        }
        return !state().equals(before);
    }

    private Set<String> state() {
        Set<String> state = new LinkedHashSet<>();
        design.limits().forEach((id, limit) -> state.add(id + " " + limit.terms().size()));
        design.pairings().forEach((id, pairing) -> state.add(id + " " + pairing.allowed()));
        for (int i = 0; i < open.size(); i++) {
            for (int o = 0; o < open.options(i); o++) {
                if (design.struck().why(i, o) != null) {
                    state.add(i + "/" + o);
                }
            }
        }
        return state;
    }

    /** The smallest fault at the far end must clear: the resistance of its loop stays below what the device needs. */
    private void clearing(CheckContext context, UnclearedFault fault) {
        if (!(fault.neededA() > 0) || !(fault.fault().throughA() > 0) || Double.isInfinite(fault.neededA())) {
            return;
        }
        Plan plan = context.plan();
        double loopOhm = fault.fault().loopOhm();
        Map<Integer, double[]> values = new LinkedHashMap<>();
        double openOhm = 0;
        for (LoopShare share : fault.shares()) {
            int conductor = share.branch().kind() == FaultBranch.Kind.CONDUCTOR ? share.branch().index() : -1;
            int item = conductor < 0 ? -1 : open.ofConductor(conductor);
            if (item >= 0) {
                Plan.Conductor core = plan.conductors().get(conductor);
                double metal = 1 - core.jointsOhm() / StrictMath.max(share.branch().ohm(), core.jointsOhm());
                double ohm = share.share() * loopOhm * metal;
                openOhm += ohm;
                double[] ohms = values.computeIfAbsent(item, i -> new double[open.options(i)]);
                for (int o = 0; o < ohms.length; o++) {
                    ohms[o] += ohm * DesignLimits.ohmShare(core, open.cable(item).options().get(o));
                }
            }
        }
        double mostOhm = fault.fault().openV() / fault.neededA() * fault.fault().throughA() / fault.fault().totalA();
        int way = open.ofElement(fault.protector());
        if (way >= 0) {
            double[] allowed = clearingOhm(plan, fault, way, mostOhm);
            double least = Arrays.stream(allowed).max().orElse(mostOhm);
            double[] lost = new double[allowed.length];
            for (int f = 0; f < lost.length; f++) {
                lost[f] = least - allowed[f];
            }
            values.put(way, lost);
            mostOhm = least;
        }
        String id = "clearing of " + plan.conductors().get(fault.fault().conductor()).id() + " to " + fault.fault().target();
        design.limit(id, mostOhm - (loopOhm - openOhm), values, new Constraint("fault-clears",
                context.names().conductor(fault.fault().conductor()), null, Quantity.of(1000 * mostOhm, "mohm")));
    }

    /** Largest loop resistance that each protector on offer still clears, ohm. */
    private double[] clearingOhm(Plan plan, UnclearedFault fault, int way, double mostOhm) {
        Plan.Protector now = (Plan.Protector) plan.elements().get(fault.protector());
        double coldC = new DeviceCurves(plan).coldC(now.device());
        double[] ohm = new double[open.options(way)];
        for (int f = 0; f < ohm.length; f++) {
            Plan.ProtectorOption option = open.way(way).options().get(f);
            CurvePair curve = option.curve() == null ? null : CurvePair.of(option.ratingA(), option.curve()).orElse(null);
            double neededA = curve == null ? fault.neededA() * option.ratingA() / now.ratingA()
                    : curve.at(coldC).clearingA(fault.limitS());
            ohm[f] = mostOhm * fault.neededA() / neededA;
        }
        return ohm;
    }

    private void protectedBy(CheckContext context, int[] choice, Finding finding) {
        for (int c = 0; c < context.plan().conductors().size(); c++) {
            if (context.names().conductor(c).equals(finding.element())) {
                ConductorProtection row = context.protection().conductor(c);
                Set<Integer> devices = new LinkedHashSet<>();
                for (Feed feed : row.feeds()) {
                    devices.addAll(feed.next());
                }
                if (row.overload() != null && row.overload().protector() >= 0) {
                    devices.add(row.overload().protector());
                }
                for (ReturnDuty duty : row.duties()) {
                    if (duty.protector() >= 0 && devices.isEmpty()) {
                        devices.add(duty.protector());
                    }
                }
                notTogether(open.ofConductor(c), open.ofElement(devices.isEmpty() ? -1 : devices.iterator().next()), choice,
                        finding);
            }
        }
    }

    /** Not this section or a smaller one with this rating or a larger one. */
    private void notTogether(int cable, int way, int[] choice, Finding finding) {
        if (cable >= 0 && way >= 0) {
            boolean[][] allowed = new boolean[open.options(cable)][open.options(way)];
            for (int o = 0; o < allowed.length; o++) {
                for (int f = 0; f < allowed[o].length; f++) {
                    allowed[o][f] = o > choice[cable] || f < choice[way];
                }
            }
            design.pairing(finding.rule() + " seen " + open.id(cable) + " " + open.id(way), cable, way, allowed,
                    meaning(finding));
        } else if (cable >= 0) {
            for (int o = 0; o <= choice[cable]; o++) {
                design.struck().strike(cable, o, meaning(finding));
            }
        } else if (way >= 0) {
            for (int f = choice[way]; f < open.options(way); f++) {
                design.struck().strike(way, f, meaning(finding));
            }
        }
    }

    /** Not this section of a case conductor or a smaller one beside that of the supply or a larger one. */
    private void caseEarth(CheckContext context, Finding finding, int[] choice) {
        int earth = itemOfCable(context, finding.element());
        int supply = finding.causes().stream().mapToInt(cause -> itemOfCable(context, cause.element())).filter(i -> i >= 0)
                .findFirst().orElse(-1);
        if (earth >= 0 && supply >= 0 && supply != earth) {
            boolean[][] allowed = new boolean[open.options(earth)][open.options(supply)];
            for (int o = 0; o < allowed.length; o++) {
                for (int p = 0; p < allowed[o].length; p++) {
                    allowed[o][p] = o > choice[earth] || p < choice[supply];
                }
            }
            design.pairing("case-earth seen " + open.id(earth) + " " + open.id(supply), earth, supply, allowed,
                    meaning(finding));
        } else if (earth >= 0) {
            for (int o = 0; o <= choice[earth]; o++) {
                design.struck().strike(earth, o, meaning(finding));
            }
        }
    }

    private int itemOfCable(CheckContext context, String id) {
        for (int c = 0; c < context.plan().conductors().size(); c++) {
            if (context.names().conductor(c).equals(id)
                    || context.plan().cables().get(context.plan().conductors().get(c).cable()).id().equals(id)) {
                return open.ofConductor(c);
            }
        }
        return -1;
    }

    private void strikeUpTo(String id, int[] choice, Finding finding) {
        Integer item = itemOfId.get(id);
        for (int o = 0; item != null && o <= choice[item]; o++) {
            design.struck().strike(item, o, meaning(finding));
        }
    }

    private void breaking(Finding finding, int[] choice) {
        Integer item = itemOfId.get(finding.element());
        if (item != null && !open.isCable(item)) {
            double brokenA = open.way(item).options().get(choice[item]).breakingA();
            for (int o = 0; o < open.options(item); o++) {
                if (!(open.way(item).options().get(o).breakingA() > brokenA)) {
                    design.struck().strike(item, o, meaning(finding));
                }
            }
        }
    }

    /** Not this rating or a larger one behind that rating or a smaller one. */
    private void selective(Finding finding, int[] choice) {
        Integer down = itemOfId.get(finding.element());
        Integer up = finding.causes().isEmpty() ? null : itemOfId.get(finding.causes().get(0).element());
        if (down != null && up != null) {
            boolean[][] allowed = new boolean[open.options(down)][open.options(up)];
            for (int d = 0; d < allowed.length; d++) {
                for (int u = 0; u < allowed[d].length; u++) {
                    allowed[d][u] = d < choice[down] || u > choice[up];
                }
            }
            design.pairing("selectivity seen " + open.id(down) + " " + open.id(up), down, up, allowed, meaning(finding));
        } else if (down != null) {
            for (int d = choice[down]; d < open.options(down); d++) {
                design.struck().strike(down, d, meaning(finding));
            }
        } else if (up != null) {
            strikeUpTo(open.id(up), choice, finding);
        }
    }

    /** At least one of the cables that a finding names has to be larger. */
    private void larger(CheckContext context, int[] choice, Finding finding) {
        Set<String> named = new LinkedHashSet<>();
        named.add(finding.element());
        finding.causes().forEach(cause -> named.add(cause.element()));
        Map<Integer, double[]> values = new LinkedHashMap<>();
        for (int c = 0; c < context.plan().conductors().size(); c++) {
            int item = open.ofConductor(c);
            if (item >= 0 && (named.contains(context.names().conductor(c))
                    || named.contains(context.plan().cables().get(context.plan().conductors().get(c).cable()).id()))) {
                double[] stays = new double[open.options(item)];
                for (int o = 0; o <= choice[item]; o++) {
                    stays[o] = 1;
                }
                values.put(item, stays);
            }
        }
        List<Integer> at = new ArrayList<>();
        values.keySet().forEach(item -> at.add(choice[item]));
        design.limit(finding.rule() + " seen " + finding.element() + " " + finding.caseName() + " " + at, values.size() - 1.0,
                values, meaning(finding));
    }

    static Constraint meaning(Finding finding) {
        return new Constraint(finding.rule(), finding.element(), finding.caseName(),
                finding.wanted() == null ? Quantity.of(Double.NaN, "1") : finding.wanted());
    }
}
