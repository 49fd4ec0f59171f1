// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import org.loomwright.engine.result.Figures;

/** Figures with their units as charts show them. */
final class ChartWords {
    /** Does not break: a figure stays with its unit. */
    private static final String BLANK = "\u00A0";

    private ChartWords() {
    }

    static String three(double value) {
        String text = Figures.three(value);
        return text.contains(".") ? text.replaceFirst("0+$", "").replaceFirst("\\.$", "") : text;
    }

    static String amps(double amps) {
        return three(amps) + BLANK + "A";
    }

    static String celsius(double temperatureC) {
        return three(temperatureC) + BLANK + "\u00B0C";
    }

    static String seconds(double seconds) {
        return seconds < 1 ? three(seconds * 1000) + BLANK + "ms" : three(seconds) + BLANK + "s";
    }
}
