// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

/**
 * A sheet with sides 1 : 1.414.
 *
 * @param name     the standard sheet it is printed on at 80 % or larger, for example A3
 * @param widthPx  px at 96 dpi
 * @param heightPx px at 96 dpi
 */
record SheetSize(String name, double widthPx, double heightPx) {
    private static final double LEAST_SHORT_PX = 794;
    private static final double SHORT_MM = 210;
    private static final double PX_PER_MM = 96 / 25.4;
    /** Text of 12 px is still legible in print at this scale. */
    private static final double LEAST_SCALE = 0.8;

    /** The smallest lying sheet around a drawing. */
    static SheetSize around(double widthPx, double heightPx) {
        double ratio = StrictMath.sqrt(2);
        double shorter = StrictMath.ceil(StrictMath.max(LEAST_SHORT_PX, StrictMath.max(widthPx / ratio, heightPx)));
        return new SheetSize(name(shorter), StrictMath.ceil(shorter * ratio), shorter);
    }

    /** Names of ISO 216 up to A0; larger sheets are printed on several. */
    private static String name(double shorterPx) {
        double mm = SHORT_MM;
        for (int step = 4; step >= 0; step--) {
            if (shorterPx * LEAST_SCALE <= mm * PX_PER_MM) {
                return "A" + step;
            }
            mm *= StrictMath.sqrt(2);
        }
        return "above A0";
    }
}
