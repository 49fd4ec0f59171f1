// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.overlay;

/** What an overlay shows by colour; only one lies over a diagram at a time. */
public enum OverlayKind {
    /** Voltage lost along a conductor, mV. */
    VOLTAGE_DROP("voltage drop of the conductor", "mV"),
    /** Temperature of a conductor, degrees Celsius. */
    TEMPERATURE("temperature of the conductor", "\u00B0C"),
    /** Current through a protective device as a share of its rating, per cent. */
    FUSE_LOAD("load of the fuse", "%"),
    /** Cross section of the cables as a share of the duct's inner one, per cent. */
    FILL("duct filled", "%"),
    /** Potential of a structure body against the battery's minus, mV, without its sign. */
    POTENTIAL("potential of the structure", "mV");

    private final String words;
    private final String unit;

    OverlayKind(String words, String unit) {
        this.words = words;
        this.unit = unit;
    }

    /** What is shown, for legends. */
    public String words() {
        return words;
    }

    /** Unit of the values. */
    public String unit() {
        return unit;
    }
}
