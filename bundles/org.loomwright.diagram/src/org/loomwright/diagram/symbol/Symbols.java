// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.symbol;

import org.loomwright.diagram.scene.Tone;

/**
 * Symbols after IEC 60617, drawn anew on the grid of 10 px: leads left and right, those of batteries at top and bottom. What lies
 * in a conductor has the ports {@code a} at the left and {@code b} at the right; what takes current {@code in} and {@code out};
 * sources {@code plus} and {@code minus}.
 */
public final class Symbols {
    private Symbols() {
    }

    /**
     * A symbol.
     *
     * @param kind which
     * @param tone its colour: ink, or that of what is off or spare
     */
    public static Symbol of(SymbolKind kind, Tone tone) {
        Pen pen = new Pen(tone);
        return switch (kind) {
            case FUSE, FUSE_SPARE, BREAKER, CONTACT_OPEN, CONTACT_CLOSED, COIL, SHUNT, DIODE, CONNECTOR, JUNCTION ->
                    inLine(kind, pen).symbol();
            case BATTERY, GENERATOR, SOLAR -> source(kind, pen).symbol();
            case FRAME, EARTH_POINT, TERMINAL, BOX -> fixture(kind, pen).symbol();
            case MOTOR, LAMP, HEATER, COOLER, SOCKET, LOAD, METER -> taker(kind, pen).symbol();
            case INVERTER, CONVERTER, RECTIFIER, RADIO, SENSOR, SCREEN, CONTROLLER -> square(kind, pen).symbol();
        };
    }

    private static Pen inLine(SymbolKind kind, Pen pen) {
        switch (kind) {
            case FUSE -> pen.box(0, 0, 30, 10).line(-15, 0, 15, 0).port("a", -15, 0).port("b", 15, 0);
            case FUSE_SPARE -> pen.dashedBox(30, 10).port("a", -15, 0).port("b", 15, 0);
            case BREAKER -> pen.line(-15, 0, -9, 0, 8, -11).line(9, 0, 15, 0).line(6, -3, 12, 3).line(6, 3, 12, -3)
                    .port("a", -15, 0).port("b", 15, 0);
            case CONTACT_OPEN -> pen.line(-15, 0, -11, 0).line(-8, -2, 8, -11).line(9, 0, 15, 0).circle(-9, 0, 2.5)
                    .port("a", -15, 0).port("b", 15, 0);
            case CONTACT_CLOSED -> pen.line(-15, 0, 15, 0).line(9, 0, 9, -5).circle(-9, 0, 2.5)
                    .port("a", -15, 0).port("b", 15, 0);
            case COIL -> pen.box(0, 0, 20, 14).port("a", -10, 0).port("b", 10, 0);
            case SHUNT -> pen.box(0, 0, 30, 10).line(-8, -5, -8, -10).line(8, -5, 8, -10).port("a", -15, 0).port("b", 15, 0);
            case DIODE -> pen.line(-15, 0, 15, 0).solid(-6, -6, -6, 6, 6, 0).line(6, -7, 6, 7).port("a", -15, 0).port("b", 15, 0);
            case CONNECTOR -> pen.line(-15, 0, -3, 0).arc(4, 0, 6, 90, 270).solid(-3, -2, 3, -2, 3, 2, -3, 2).line(4, 0, 15, 0)
                    .port("a", -15, 0).port("b", 15, 0);
            default -> pen.dot(0, 0, 3).port("a", 0, 0).port("b", 0, 0);
        }
        return pen;
    }

    private static Pen source(SymbolKind kind, Pen pen) {
        switch (kind) {
            case BATTERY -> pen.line(0, -20, 0, -12).line(-15, -12, 15, -12).line(2.5, new double[] {-7, -6, 7, -6})
                    .dashed(1.5, 2, 2, 0, -5, 0, 5).line(-15, 6, 15, 6).line(2.5, new double[] {-7, 12, 7, 12})
                    .line(0, 12, 0, 20).port("plus", 0, -20).port("minus", 0, 20);
            case GENERATOR -> direct(pen.circle(0, 0, 15).text(0, 2, 13, "G")).port("plus", 15, 0).port("minus", 0, 15);
            default -> pen.box(0, 0, 30, 30).line(-15, -15, 15, 15).line(2, -8, 10, -8).line(6, -12, 6, -4)
                    .dashed(1.5, 3, 2, -12, 10, -2, 10).port("plus", 15, 0).port("minus", 0, 15);
        }
        return pen;
    }

    private static Pen fixture(SymbolKind kind, Pen pen) {
        switch (kind) {
            case FRAME -> pen.line(0, -10, 0, 0).line(-9, 0, 9, 0).line(-9, 0, -13, 7).line(0, 0, -4, 7).line(9, 0, 5, 7)
                    .port("in", 0, -10);
            case EARTH_POINT -> pen.circle(0, 0, 5).dot(0, 0, 1.6).port("in", 0, 0);
            case TERMINAL -> pen.circle(0, 0, 2.75).port("in", 0, 0);
            default -> pen.box(0, 0, 28, 28).line(4, new double[] {-6, -9, -6, 9}).line(-6, -5, 9, -5).line(-6, 5, 9, 5)
                    .port("in", -14, 0).port("out", 14, 0);
        }
        return pen;
    }

    private static Pen taker(SymbolKind kind, Pen pen) {
        switch (kind) {
            case MOTOR -> direct(pen.circle(0, 0, 14).text(0, 2, 13, "M")).port("in", -14, 0).port("out", 14, 0);
            case METER -> pen.circle(0, 0, 14).line(-7, 6, 6, -7).solid(7, -8, 1, -6, 5, -2)
                    .port("in", -14, 0).port("out", 14, 0);
            case LAMP -> pen.circle(0, 0, 12).line(-8.5, -8.5, 8.5, 8.5).line(-8.5, 8.5, 8.5, -8.5).port("in", -12, 0)
                    .port("out", 12, 0);
            case HEATER -> pen.box(0, 0, 30, 14).line(-7.5, -7, -7.5, 7).line(0, -7, 0, 7).line(7.5, -7, 7.5, 7)
                    .port("in", -15, 0).port("out", 15, 0);
            case COOLER -> pen.box(0, 0, 28, 28).line(0, -9, 0, 9).line(-8, -4.5, 8, 4.5).line(-8, 4.5, 8, -4.5)
                    .port("in", -14, 0).port("out", 14, 0);
            case SOCKET -> pen.arc(5, 0, 11, 90, 270).line(-14, 0, -6, 0).line(5, 0, 14, 0).port("in", -14, 0).port("out", 14, 0);
            default -> pen.box(0, 0, 30, 14).port("in", -15, 0).port("out", 15, 0);
        }
        return pen;
    }

    private static Pen square(SymbolKind kind, Pen pen) {
        pen.box(0, 0, 28, 28).port("in", -14, 0).port("out", 14, 0);
        switch (kind) {
            case INVERTER -> wave(dc(pen.line(-14, 14, 14, -14), -11, -7), 2, 7);
            case CONVERTER -> dc(dc(pen.line(-14, 14, 14, -14), -11, -7), 3, 6);
            case RECTIFIER -> dc(wave(pen.line(-14, 14, 14, -14), -11, -7), 2, 6);
            case RADIO -> pen.line(0, 10, 0, -9).line(-7, -9, 0, -1, 7, -9);
            case SENSOR -> pen.line(0, -9, 9, 0, 0, 9, -9, 0, 0, -9).dot(0, 0, 1.6);
            case SCREEN -> pen.line(-9, -7, 9, -7, 9, 5, -9, 5, -9, -7).line(-4, 9, 4, 9);
            default -> pen.line(-7, -7, 7, -7, 7, 7, -7, 7, -7, -7).line(-3, -11, -3, -7).line(3, -11, 3, -7).line(-3, 7, -3, 11)
                    .line(3, 7, 3, 11);
        }
        return pen;
    }

    /** The mark of direct current below a letter. */
    private static Pen direct(Pen pen) {
        return pen.line(1, new double[] {-6, 6, 6, 6}).dashed(1, 3, 1.5, -6, 9, 6, 9);
    }

    private static Pen dc(Pen pen, double x, double y) {
        return pen.line(1.25, new double[] {x, y, x + 9, y}).dashed(1.25, 2, 1.5, x, y + 3, x + 9, y + 3);
    }

    private static Pen wave(Pen pen, double x, double y) {
        return pen.arc(x + 2.25, y, 2.25, 180, 360).arc(x + 6.75, y, 2.25, 180, 0);
    }
}
