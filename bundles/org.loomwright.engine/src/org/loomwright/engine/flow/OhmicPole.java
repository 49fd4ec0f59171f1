// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/** A resistance with an EMF in series: cables, joints, closed contacts, batteries, resistive loads. */
class OhmicPole extends Pole {
    /** Conductance, S. */
    protected double siemens;
    /** EMF against which the current flows, V. */
    protected double emfV;
    private final boolean source;

    private OhmicPole(int a, int b, double siemens, double emfV, boolean source) {
        super(a, b);
        this.siemens = siemens;
        this.emfV = emfV;
        this.source = source;
    }

    /** A plain resistance. */
    OhmicPole(int a, int b, double ohm) {
        this(a, b, 1 / ohm, 0, false);
    }

    /** An EMF behind a resistance. */
    static OhmicPole emf(int a, int b, double volt, double ohm) {
        return new OhmicPole(a, b, 1 / ohm, volt, true);
    }

    /** Sets the conductance, 0 S or above. */
    final void setSiemens(double newSiemens) {
        siemens = newSiemens;
    }

    @Override
    final int segmentAt(double volt) {
        return 0;
    }

    @Override
    final double current(int onSegment, double volt, double leakS) {
        return siemens * (volt - emfV);
    }

    @Override
    final double slope(int onSegment, double leakS) {
        return siemens;
    }

    @Override
    boolean drives() {
        return source;
    }
}
