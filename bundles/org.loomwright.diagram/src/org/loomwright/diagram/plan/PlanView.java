// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

/** From where the vehicle is looked at; its front is to the right. */
public enum PlanView {
    /** From above: x to the right, y upwards. */
    ABOVE("seen from above"),
    /** From its right side, so that the front is to the right: x to the right, z upwards. */
    SIDE("seen from the right side");

    private final String words;

    PlanView(String words) {
        this.words = words;
    }

    /** For headings. */
    public String words() {
        return words;
    }

    /** Which of a point's lengths across the length of the vehicle is drawn upwards, mm. */
    double up(double yMm, double zMm) {
        return this == ABOVE ? yMm : zMm;
    }
}
