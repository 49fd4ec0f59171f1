// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.nets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.loomwright.engine.assembly.Plan;

/** Says from the sources at a net what it carries and at which voltage. */
final class NetSources {
    private final Plan plan;
    private final List<List<Source>> plusAt = new ArrayList<>();
    private final List<List<Source>> minusAt = new ArrayList<>();
    private final boolean[] structure;
    private final Nets.Kind[] kinds;
    private final int[] domains;
    private final double[] levelV;

    /** A source between two nets; volts as rated. */
    private record Source(int plus, int minus, double volts, boolean cell) {
    }

    NetSources(Plan plan, int[] netOf, int[] bodyNet, int nets) {
        this.plan = plan;
        for (int n = 0; n < nets; n++) {
            plusAt.add(new ArrayList<>(1));
            minusAt.add(new ArrayList<>(1));
        }
        structure = new boolean[nets];
        for (int net : bodyNet) {
            structure[net] = true;
        }
        List<Source> sources = new ArrayList<>();
        for (Plan.Element element : plan.elements()) {
            if (element instanceof Plan.Cell cell) {
                sources.add(new Source(netOf[cell.a()], netOf[cell.b()], cell.nominalV(), true));
            } else if (element instanceof Plan.Regulated source) {
                sources.add(new Source(netOf[source.a()], netOf[source.b()], source.setV(), false));
            } else if (element instanceof Plan.Converter c) {
                sources.add(new Source(netOf[c.outA()], netOf[c.outB()], c.setV(), false));
            }
        }
        for (Source source : sources) {
            plusAt.get(source.plus()).add(source);
            minusAt.get(source.minus()).add(source);
        }
        kinds = new Nets.Kind[nets];
        for (int n = 0; n < nets; n++) {
            kinds[n] = kindBySides(n);
        }
        levelV = levels(sources);
        domains = domains(netOf, nets);
    }

    Nets.Kind kind(int net) {
        return kinds[net];
    }

    int domain(int net) {
        return domains[net];
    }

    private Nets.Kind kindBySides(int net) {
        boolean plus = !plusAt.get(net).isEmpty();
        boolean minus = !minusAt.get(net).isEmpty();
        if (plus && (minus || structure[net])) {
            return isMiddle(net) ? Nets.Kind.MIDDLE : Nets.Kind.MIXED;
        }
        return plus ? Nets.Kind.PLUS : minus || structure[net] ? Nets.Kind.MINUS : Nets.Kind.DEAD;
    }

    /** A middle has no structure, and every cell that ends here leads on to another net than the next cell starts from. */
    private boolean isMiddle(int net) {
        List<Source> below = plusAt.get(net);
        List<Source> above = minusAt.get(net);
        boolean cells = below.stream().anyMatch(Source::cell) && above.stream().anyMatch(Source::cell);
        if (structure[net] || !cells) {
            return false;
        }
        for (Source lower : below) {
            for (Source upper : above) {
                if (lower.minus() == net || upper.plus() == net || lower.minus() == upper.plus()) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Rated voltage of each net over its minus; NaN where no source tells. */
    private double[] levels(List<Source> sources) {
        double[] level = new double[kinds.length];
        Arrays.fill(level, Double.NaN);
        for (int n = 0; n < level.length; n++) {
            if (kinds[n] == Nets.Kind.MINUS) {
                level[n] = 0;
            }
        }
        boolean changed = true;
        while (changed) {
            changed = false;
            for (Source source : sources) {
                if (Double.isNaN(level[source.plus()]) && !Double.isNaN(level[source.minus()])) {
                    level[source.plus()] = level[source.minus()] + source.volts();
                    changed = true;
                }
            }
        }
        return level;
    }

    private int[] domains(int[] netOf, int nets) {
        int[] found = new int[nets];
        Arrays.fill(found, -1);
        for (int d = 0; d < plan.domains().size(); d++) {
            int terminal = plan.domains().get(d).sourceTerminal();
            if (terminal >= 0) {
                note(netOf[terminal], d, found);
            }
        }
        for (int n = 0; n < nets; n++) {
            for (Source source : plusAt.get(n)) {
                note(n, domainOf(levelV[source.minus()] + source.volts()), found);
            }
        }
        for (int n = 0; n < nets; n++) {
            if (kinds[n] == Nets.Kind.MINUS || kinds[n] == Nets.Kind.MIDDLE) {
                found[n] = domainAbove(n, found, 0);
            }
        }
        return found;
    }

    /** A plus net takes the first domain that claims it; another voltage claiming it too makes it mixed. */
    private void note(int net, int domain, int[] found) {
        if (domain < 0 || kinds[net] != Nets.Kind.PLUS) {
            return;
        }
        if (found[net] < 0) {
            found[net] = domain;
        } else if (plan.domains().get(found[net]).nominalV() != plan.domains().get(domain).nominalV()) {
            kinds[net] = Nets.Kind.MIXED;
        }
    }

    /** The one domain of the nets at the top of the cells and sources that stand on a net; -1 when there are several. */
    private int domainAbove(int net, int[] found, int depth) {
        int only = -1;
        for (Source source : minusAt.get(net)) {
            int domain = kinds[source.plus()] == Nets.Kind.MIDDLE && depth < kinds.length
                    ? domainAbove(source.plus(), found, depth + 1)
                    : found[source.plus()];
            if (only >= 0 && domain >= 0 && domain != only) {
                return -1;
            }
            only = domain >= 0 ? domain : only;
        }
        return only;
    }

    /**
     * The domain whose nominal voltage is nearest, as a ratio; -1 when it is more than half the way to the double or the
     * half, which
     * then is another level.
     */
    private int domainOf(double volts) {
        int nearest = -1;
        double best = StrictMath.sqrt(2);
        for (int d = 0; d < plan.domains().size(); d++) {
            double ratio = volts / plan.domains().get(d).nominalV();
            double away = StrictMath.max(ratio, 1 / ratio);
            if (away < best) {
                best = away;
                nearest = d;
            }
        }
        return nearest;
    }
}
