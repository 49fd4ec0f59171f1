// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import java.util.LinkedHashMap;
import java.util.Map;

/** One published worked example. */
record WorkedExample(String id, String topic, Map<String, String> inputs, Map<String, String> expected, String tolerance,
        String source, String confidence) {

    static WorkedExample of(Map<String, String> row) {
        return new WorkedExample(row.get("id"), row.get("topic"), pairs(row.get("inputs")), pairs(row.get("expected_outputs")),
                row.get("tolerance"), row.get("source"), row.get("confidence"));
    }

    private static Map<String, String> pairs(String text) {
        Map<String, String> pairs = new LinkedHashMap<>();
        for (String pair : text.split(";")) {
            int at = pair.indexOf('=');
            pairs.put(pair.substring(0, at), pair.substring(at + 1));
        }
        return pairs;
    }

    boolean has(String input) {
        return inputs.containsKey(input);
    }

    double in(String input) {
        if (!inputs.containsKey(input)) {
            throw new IllegalArgumentException(id + " has no input " + input + ": " + inputs);
        }
        return Double.parseDouble(inputs.get(input));
    }

    /** Members of a list, or the one value. */
    double[] list(String input) {
        String[] texts = inputs.get(input).split("\\|");
        double[] values = new double[texts.length];
        for (int i = 0; i < texts.length; i++) {
            values[i] = Double.parseDouble(texts[i]);
        }
        return values;
    }

    /** Permitted distance from an expected value; an exact one leaves room for the last bits only. */
    double room(double value) {
        if (tolerance.equals("exact")) {
            return 1e-6 * Math.max(1, Math.abs(value));
        } else if (tolerance.endsWith("%")) {
            return Math.abs(value) * Double.parseDouble(tolerance.replace("%", "").strip()) / 100;
        }
        return Double.parseDouble(tolerance);
    }

    /** Length of the conductor whose drop counts, m: there and back, or as stated. */
    double conductorM() {
        for (String name : new String[] {"length_total_conductor_m", "length_total_m", "length_round_trip_m", "length_m"}) {
            if (has(name)) {
                return in(name);
            }
        }
        return 2 * in("length_one_way_m");
    }

    double currentA() {
        return has("current_A") ? in("current_A") : in("power_W") / in("system_V");
    }
}
