// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.Arrays;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.nets.Nets;

/** Highest voltage of each domain over the settled cases, between its source terminal and the minus of the source. */
final class DomainVolts {
    private final CheckContext context;
    private final double[] highestV;

    DomainVolts(CheckContext context) {
        this.context = context;
        highestV = new double[context.plan().domains().size()];
        Arrays.fill(highestV, Double.NaN);
        for (int d = 0; d < highestV.length; d++) {
            int plus = context.plan().domains().get(d).sourceTerminal();
            int minus = plus < 0 ? -1 : minusBelow(plus);
            if (minus >= 0) {
                for (SolvedCase solved : context.settled()) {
                    double volts = solved.running().voltage(plus, minus);
                    highestV[d] = Double.isNaN(highestV[d]) || volts > highestV[d] ? volts : highestV[d];
                }
            }
        }
    }

    /** Highest voltage of the domain of a terminal's net, V; NaN where none is known. */
    double highestAt(int terminal) {
        int domain = domainAt(terminal);
        return domain < 0 ? Double.NaN : highestV[domain];
    }

    /** Nominal voltage of the domain of a terminal's net, V; NaN where none is known. */
    double nominalAt(int terminal) {
        int domain = domainAt(terminal);
        return domain < 0 ? Double.NaN : context.plan().domains().get(domain).nominalV();
    }

    /** Domain of the net of a terminal, -1 for none. */
    int domainAt(int terminal) {
        return context.nets().nets().get(context.nets().netOf()[terminal]).domain();
    }

    /** Minus terminal of the source at a terminal; of cells in series, that of the lowest. */
    private int minusBelow(int plus) {
        int at = plus;
        for (int hops = 0; hops <= context.plan().elements().size(); hops++) {
            int minus = minusOfSourceAt(at);
            if (minus < 0 || kind(minus) != Nets.Kind.MIDDLE) {
                return minus;
            }
            at = minus;
        }
        return -1;
    }

    private int minusOfSourceAt(int terminal) {
        int net = context.nets().netOf()[terminal];
        int found = -1;
        for (Plan.Element element : context.plan().elements()) {
            int plus = PlanGraph.sourceTerminal(element);
            if (plus == terminal || found < 0 && plus >= 0 && context.nets().netOf()[plus] == net) {
                found = element instanceof Plan.Cell cell ? cell.b()
                        : element instanceof Plan.Regulated source ? source.b() : ((Plan.Converter) element).outB();
            }
        }
        return found;
    }

    private Nets.Kind kind(int terminal) {
        return context.nets().nets().get(context.nets().netOf()[terminal]).kind();
    }
}
