// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.preference;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.WireGauge;

/**
 * How figures are shown and read: units of the files (mm, mm2, kg, degrees Celsius) or those that a person prefers. One inch is
 * 25.4 mm and one pound 0.45359237 kg by definition (international yard and pound, 1959).
 *
 * @param awg      sections by American wire gauge too
 * @param imperial inches, feet, pounds, degrees Fahrenheit
 */
public record ShownFigures(boolean awg, boolean imperial) {
    private static final BigDecimal INCH_MM = new BigDecimal("25.4");
    private static final BigDecimal FOOT_M = new BigDecimal("0.3048");
    private static final BigDecimal POUND_KG = new BigDecimal("0.45359237");
    private static final BigDecimal DEGREE_F = new BigDecimal("1.8");
    private static final BigDecimal FREEZING_F = new BigDecimal("32");
    private static final int DECIMALS = 3;
    private static final Pattern WRITTEN = Pattern.compile("([+-]?[0-9]*\\.?[0-9]+)\\s*([^0-9\\s].*)?");

    /** As the preferences are now. */
    public static ShownFigures current() {
        return new ShownFigures(Units.section() == Units.Section.AWG, Units.system() == Units.Length.IMPERIAL);
    }

    /** A figure with its unit, three significant digits. */
    public String of(Quantity quantity) {
        if (quantity == null) {
            return "";
        }
        if ("mm2".equals(quantity.unit())) {
            return section(quantity.value());
        }
        String unit = unit(quantity.unit());
        return (Figures.three(value(quantity.value(), quantity.unit())) + (unit.isEmpty() ? "" : " " + unit))
                .replace("-", "\u2212");
    }

    /** A section, by gauge too where that is wanted. */
    public String section(double mm2) {
        String gauge = awg ? WireGauge.approximately(mm2) : null;
        return Figures.three(mm2) + " mm\u00B2" + (gauge == null ? "" : " " + gauge);
    }

    /** A figure of a unit of the files in the unit shown. */
    public double value(double value, String unit) {
        return Double.isFinite(value) && converts(unit) ? shown(new BigDecimal(value), unit).doubleValue() : value;
    }

    /** The unit shown for a unit of the files, as people write it; empty for a plain number. */
    public String unit(String unit) {
        String shown = imperial ? switch (unit) {
            case "mm" -> "in";
            case "m" -> "ft";
            case "kg" -> "lb";
            case "degC" -> "\u00B0F";
            case "mohm/m" -> "mohm/ft";
            default -> unit;
        } : unit;
        return switch (shown) {
            case "1", "money" -> "";
            case "uF" -> "\u00B5F";
            default -> shown.replace("degC", "\u00B0C").replace("mm2", "mm\u00B2").replace("cm2", "cm\u00B2")
                    .replace("dm3", "dm\u00B3").replace("ohm", "\u03A9");
        };
    }

    /** True when figures of a unit are shown in another. */
    public boolean converts(String unit) {
        return imperial && !unit(unit).equals(new ShownFigures(awg, false).unit(unit));
    }

    /** A value of the files as the number shown, rounded where it has to be converted. */
    public BigDecimal shown(BigDecimal value, String unit) {
        if (!converts(unit)) {
            return value;
        }
        BigDecimal exact = switch (unit) {
            case "mm" -> value.divide(INCH_MM, 12, RoundingMode.HALF_UP);
            case "m" -> value.divide(FOOT_M, 12, RoundingMode.HALF_UP);
            case "kg" -> value.divide(POUND_KG, 12, RoundingMode.HALF_UP);
            case "mohm/m" -> value.multiply(FOOT_M);
            default -> value.multiply(DEGREE_F).add(FREEZING_F);
        };
        return plain(exact.setScale(DECIMALS, RoundingMode.HALF_UP));
    }

    /**
     * A number that a person wrote as a value of the files. A unit may follow it; without one it is in the unit shown.
     *
     * @param unit unit of the files
     * @throws IllegalArgumentException when it cannot be read
     */
    public BigDecimal read(String text, String unit) {
        if ("mm2".equals(unit)) {
            WireGauge gauge = WireGauge.written(text);
            if (gauge != null) {
                return gauge.tabledMm2();
            }
        }
        Matcher matcher = WRITTEN.matcher(text.strip());
        if (!matcher.matches()) {
            throw new IllegalArgumentException(text);
        }
        BigDecimal number = new BigDecimal(matcher.group(1));
        String written = matcher.group(2) == null ? unit(unit) : matcher.group(2).strip();
        return written.equals(new ShownFigures(awg, false).unit(unit)) || written.equals(unit) ? number
                : plain(read(number, written.toLowerCase(Locale.ROOT), unit, text));
    }

    private static BigDecimal read(BigDecimal number, String written, String unit, String text) {
        BigDecimal mm = switch (written) {
            case "mm" -> number;
            case "cm" -> number.movePointRight(1);
            case "m" -> number.movePointRight(DECIMALS);
            case "in", "\"", "inch", "inches" -> number.multiply(INCH_MM);
            case "ft", "'", "foot", "feet" -> number.multiply(FOOT_M).movePointRight(DECIMALS);
            default -> null;
        };
        if (mm != null && "mm".equals(unit)) {
            return mm;
        }
        if (mm != null && "m".equals(unit)) {
            return mm.movePointLeft(DECIMALS);
        }
        return switch (unit + " " + written) {
            case "mm2 mm2", "mm2 mm\u00B2" -> number;
            case "degC \u00B0c", "degC c", "degC degc" -> number;
            case "degC \u00B0f", "degC f", "degC degf" -> number.subtract(FREEZING_F).divide(DEGREE_F, DECIMALS,
                    RoundingMode.HALF_UP);
            case "kg lb", "kg lbs" -> number.multiply(POUND_KG).setScale(DECIMALS + 2, RoundingMode.HALF_UP);
            case "mohm/m mohm/ft", "mohm/m m\u03C9/ft" -> number.divide(FOOT_M, DECIMALS + 2, RoundingMode.HALF_UP);
            default -> throw new IllegalArgumentException(text);
        };
    }

    private static BigDecimal plain(BigDecimal number) {
        BigDecimal bare = number.stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0) : bare;
    }
}
