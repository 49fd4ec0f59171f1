// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;

/** What a column of numbers holds, with the units that are understood for it. */
enum Quantity {
    /** Watts. */
    POWER("W", Map.of("w", "1", "watt", "1", "watts", "1", "kw", "1000", "mw", "0.001")),
    /** Amperes. */
    CURRENT("A", Map.of("a", "1", "amp", "1", "amps", "1", "ampere", "1", "amperes", "1", "ma", "0.001")),
    /** Volts. */
    VOLTAGE("V", Map.of("v", "1", "volt", "1", "volts", "1", "vdc", "1")),
    /** Millimetres. */
    LENGTH("mm", Map.of("mm", "1", "cm", "10", "m", "1000", "in", "25.4", "inch", "25.4", "ft", "304.8")),
    /** A plain number. */
    NUMBER("", Map.of("x", "1", "pcs", "1", "pc", "1"));

    private final String unit;
    private final Map<String, String> factors;

    Quantity(String unit, Map<String, String> factors) {
        this.unit = unit;
        this.factors = factors;
    }

    /** The unit of values. */
    String unit() {
        return unit;
    }

    /** What a written unit has to be multiplied by; null for one that is not understood here. */
    BigDecimal factor(String written) {
        String factor = factors.get(written.toLowerCase(Locale.ROOT).replace("\u00D7", "x"));
        return factor == null ? null : new BigDecimal(factor);
    }
}
