// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.result;

import java.util.List;

/**
 * What would mend a finding.
 *
 * @param text    the proposal in words, with the figure it would give
 * @param changes the changes to make together; empty when a person has to decide how
 */
public record Mend(String text, List<Change> changes) {
    public Mend {
        changes = List.copyOf(changes);
    }

    /** A mend in words only. */
    public static Mend inWords(String text) {
        return new Mend(text, List.of());
    }

    /** One change of the model, named by element ids and part names. */
    public sealed interface Change {
    }

    /** Give a cable another section. */
    public record UseSection(String cable, double sectionMm2) implements Change {
    }

    /** Lay a cable of the same kind beside a cable, to share its current. */
    public record AddParallel(String cable) implements Change {
    }

    /** Fit another protector into a way. */
    public record FitProtector(String way, String protectorPart) implements Change {
    }

    /** Add a strap between two bodies. */
    public record AddBond(String bodyA, String bodyB, double sectionMm2, double lengthMm) implements Change {
    }

    /** Set one value of a device's element. */
    public record SetValue(String device, String element, String quantity, double value) implements Change {
    }
}
