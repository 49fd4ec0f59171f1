// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import java.math.BigDecimal;

/** Numbers on axes: no exponent, thousands parted by a thin space. */
final class AxisText {
    private static final int FROM = 5;

    private AxisText() {
    }

    static String plain(double value) {
        String text = BigDecimal.valueOf(value).round(new java.math.MathContext(6)).stripTrailingZeros().toPlainString();
        int whole = text.indexOf('.') < 0 ? text.length() : text.indexOf('.');
        return whole < FROM ? text : text.substring(0, whole - 3) + "\u2009" + text.substring(whole - 3);
    }
}
