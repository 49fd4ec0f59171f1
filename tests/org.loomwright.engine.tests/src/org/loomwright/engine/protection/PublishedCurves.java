// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.ReferenceCsv;

/** Time-current curves from published gates (makers' data to ISO 8820-3, see the reference folder's README). */
final class PublishedCurves {
    private PublishedCurves() {
    }

    /** Rows of a published kind: {@code Regular blade} or {@code Maxi blade} as its type begins. */
    static List<Map<String, String>> rows(String kind) {
        return ReferenceCsv.rows("fuse_time_gates.csv").stream().filter(row -> row.get("fuse_type").startsWith(kind)).toList();
    }

    /** Regular blade fuses of 35 and 40 A. */
    static Plan.FuseCurve regularBlade() {
        return curve("Regular blade", List.of(), List.of());
    }

    /** High-current blade fuses, with the ambient points of their 40 A part. */
    static Plan.FuseCurve highCurrentBlade() {
        List<Double> ambients = new ArrayList<>();
        List<Double> factors = new ArrayList<>();
        for (Map<String, String> row : ReferenceCsv.rows("fuse_rerating.csv")) {
            ambients.add(Double.valueOf(row.get("rule").replaceAll(".* at ([0-9]+) C", "$1")));
            factors.add(Double.parseDouble(row.get("value")) / 40);
        }
        return curve("Maxi blade", ambients, factors);
    }

    private static Plan.FuseCurve curve(String kind, List<Double> ambients, List<Double> factors) {
        List<Double> fastest = new ArrayList<>();
        List<Double> fastestS = new ArrayList<>();
        List<Double> slowest = new ArrayList<>();
        List<Double> slowestS = new ArrayList<>();
        for (Map<String, String> row : rows(kind)) {
            double times = Double.parseDouble(row.get("percent_of_rating")) / 100;
            if (!row.get("min_time_s").isEmpty()) {
                fastest.add(times);
                fastestS.add(Double.valueOf(row.get("min_time_s")));
            }
            if (!row.get("max_time_s").isEmpty()) {
                slowest.add(times);
                slowestS.add(Double.valueOf(row.get("max_time_s")));
            }
        }
        return new Plan.FuseCurve(kind, "published gates", fastest, fastestS, slowest, slowestS, ambients, factors);
    }
}
