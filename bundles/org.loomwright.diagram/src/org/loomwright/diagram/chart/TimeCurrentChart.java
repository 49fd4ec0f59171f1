// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import java.util.List;

/**
 * What a time-current chart shows. Currents in A, times in s; times may be infinite.
 *
 * @param title    what the chart is about
 * @param subtitle one line of context
 * @param bands    protective devices, the one nearest the load first
 * @param limits   damage curves of conductors
 * @param inrushes inrush points of loads
 * @param faults   fault currents
 * @param loads    steady currents to be marked on the axis, for example the load's current and Iz
 * @param verdicts what holds and what does not
 * @param footer   vehicle, arrangement and so on for the title block
 */
public record TimeCurrentChart(String title, String subtitle, List<Band> bands, List<Limit> limits, List<Spot> inrushes,
        List<Current> faults, List<Current> loads, List<Verdict> verdicts, List<Field> footer) {
    public TimeCurrentChart {
        bands = List.copyOf(bands);
        limits = List.copyOf(limits);
        inrushes = List.copyOf(inrushes);
        faults = List.copyOf(faults);
        loads = List.copyOf(loads);
        verdicts = List.copyOf(verdicts);
        footer = List.copyOf(footer);
    }

    /** A point of a curve. */
    public record At(double amps, double seconds) {
    }

    /** Fastest and slowest clearing of a device; points by rising current. */
    public record Band(String element, String name, List<At> fastest, List<At> slowest) {
        public Band {
            fastest = List.copyOf(fastest);
            slowest = List.copyOf(slowest);
        }

        /** Time of the fastest curve at a current, on straight lines in logarithms between its points; infinite below them. */
        public double fastestS(double amps) {
            for (int i = 0; i + 1 < fastest.size(); i++) {
                At from = fastest.get(i);
                At to = fastest.get(i + 1);
                if (amps >= from.amps() && amps < to.amps()) {
                    double share = StrictMath.log(amps / from.amps()) / StrictMath.log(to.amps() / from.amps());
                    return from.seconds() * StrictMath.pow(to.seconds() / from.seconds(), share);
                }
            }
            return fastest.isEmpty() || amps < fastest.get(0).amps() ? Double.POSITIVE_INFINITY : 0;
        }
    }

    /** The longest time a conductor bears a current; points by rising current. */
    public record Limit(String element, String name, List<At> points) {
        public Limit {
            points = List.copyOf(points);
        }
    }

    /** A point with a name. */
    public record Spot(String name, double amps, double seconds) {
    }

    /** A current with a name. */
    public record Current(String name, double amps) {
    }

    /** One check with its figures. */
    public record Verdict(String name, String figures, boolean holds) {
    }

    /** A field of the title block. */
    public record Field(String name, String value) {
    }
}
