// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.result;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A size of the American wire gauge. Each step of the gauge divides the diameter by the 39th root of 92; size 36 is 0.127 mm
 * (0.005 inch), 4/0 is 11.684 mm (0.46 inch). Source: ASTM B258.
 *
 * @param number number of the size; 0 for 1/0, -1 for 2/0, -2 for 3/0, -3 for 4/0
 */
public record WireGauge(int number) {
    private static final double SIZE_36_MM = 0.127;
    private static final double RATIO = 92;
    private static final double STEPS = 39;
    private static final int LARGEST = -3;
    private static final int SMALLEST = 40;
    /** Sections nearer than this to the gauge's own go by its name alone: makers round as much. */
    private static final double SAME = 0.02;
    private static final Pattern WRITTEN = Pattern.compile("AWG\\s*(\\d{1,2})(/0)?|(\\d{1,2})(/0)?\\s*AWG|(\\d)(/0)");

    public WireGauge {
        if (number < LARGEST || number > SMALLEST) {
            throw new IllegalArgumentException("sizes go from 4/0 to " + SMALLEST);
        }
    }

    /** Section of the solid round conductor of this size, mm2. */
    public double sectionMm2() {
        double diameterMm = SIZE_36_MM * StrictMath.pow(RATIO, (36 - number) / STEPS);
        return StrictMath.PI / 4 * diameterMm * diameterMm;
    }

    /** The section with four significant figures, mm2, as tables give it. */
    public BigDecimal tabledMm2() {
        return new BigDecimal(sectionMm2()).round(new MathContext(4));
    }

    /** The size whose section is nearest in ratio; null for sections beyond the gauge by more than half a step. */
    public static WireGauge near(double sectionMm2) {
        if (!(sectionMm2 > 0)) {
            return null;
        }
        double diameterMm = StrictMath.sqrt(sectionMm2 * 4 / StrictMath.PI);
        long nearest = StrictMath.round(36 - STEPS * StrictMath.log(diameterMm / SIZE_36_MM) / StrictMath.log(RATIO));
        return nearest < LARGEST || nearest > SMALLEST ? null : new WireGauge((int) nearest);
    }

    /**
     * A section by gauge: {@code AWG 14}, or {@code ~AWG 13} where the section lies between sizes; null beyond the gauge.
     *
     * @param sectionMm2 section, mm2
     */
    public static String approximately(double sectionMm2) {
        WireGauge near = near(sectionMm2);
        return near == null ? null
                : (StrictMath.abs(sectionMm2 / near.sectionMm2() - 1) <= SAME ? "" : "~") + near.words();
    }

    /** The size that a person wrote: {@code AWG 14}, {@code 14 AWG}, {@code 2/0}; null for anything else, bare numbers too. */
    public static WireGauge written(String text) {
        Matcher matcher = WRITTEN.matcher(text.strip().toUpperCase(Locale.ROOT));
        if (!matcher.matches()) {
            return null;
        }
        int form = matcher.group(1) != null ? 1 : matcher.group(3) != null ? 3 : 5;
        int figure = Integer.parseInt(matcher.group(form));
        boolean aught = matcher.group(form + 1) != null;
        int number = aught ? 1 - figure : figure;
        return number < LARGEST || number > SMALLEST || aught && figure < 1 ? null : new WireGauge(number);
    }

    /** The size as it is written: {@code AWG 14}, {@code AWG 2/0}. */
    public String words() {
        return "AWG " + (number > 0 ? Integer.toString(number) : 1 - number + "/0");
    }
}
