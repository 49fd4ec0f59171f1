// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import org.loomwright.engine.result.Figures;

/** Numbers in charts: three significant figures, the minus sign of typography. */
final class ChartNumber {
    private ChartNumber() {
    }

    static String of(double value) {
        return Figures.three(value).replace('-', '\u2212');
    }
}
