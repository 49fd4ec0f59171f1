// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.chart.TimeCurrentChart.At;
import org.loomwright.diagram.chart.TimeCurrentChart.Band;
import org.loomwright.diagram.chart.TimeCurrentChart.Current;
import org.loomwright.diagram.chart.TimeCurrentChart.Field;
import org.loomwright.diagram.chart.TimeCurrentChart.Limit;
import org.loomwright.diagram.chart.TimeCurrentChart.Spot;
import org.loomwright.diagram.chart.TimeCurrentChart.Verdict;

/** Charts with round numbers made for tests. */
final class Charts {
    private Charts() {
    }

    /** Two devices, a conductor, an inrush, and fault currents so close that their names would meet on one line. */
    static TimeCurrentChart crowded() {
        List<At> damage = new ArrayList<>();
        for (double amps = 40; amps < 4000; amps *= 1.2) {
            damage.add(new At(amps, 400_000 / (amps * amps)));
        }
        return new TimeCurrentChart("Way -X1:1, time and current", "A pump & its cable <2.5 mm2>",
                List.of(new Band("X1/1", "-X1:1, 10 A", falling(10, 1), falling(10, 20)),
                        new Band("X2/1", "-X2:1, 100 A", falling(100, 1), falling(100, 20))),
                List.of(new Limit("W1", "-W1 reaches its short-time limit, starting from the highest temperature it has in any state", damage)),
                List.of(new Spot("inrush of -M1", 25, 0.2)),
                List.of(new Current("smallest fault 200 A", 200), new Current("far end 210 A", 210),
                        new Current("near end 215 A", 215), new Current("largest fault 3 000 A", 3000)),
                List.of(new Current("load 5 A", 5), new Current("Iz 21 A", 21)),
                List.of(new Verdict("device rating", "10 A, at most 21 A", true),
                        new Verdict("fault clears", "never at 8 A; the practice wants 5 s at the smallest fault", false)),
                List.of(new Field("vehicle", "kite"), new Field("arrangement", "plain"), new Field("way", "-X1:1")));
    }

    private static List<At> falling(double ratedA, double slow) {
        return List.of(new At(1.5 * ratedA, 100 * slow), new At(3 * ratedA, slow), new At(10 * ratedA, 0.05 * slow),
                new At(100 * ratedA, 0.0005 * slow));
    }
}
