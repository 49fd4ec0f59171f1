// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

/**
 * What one resistance takes of a fault's loop.
 *
 * @param branch   the resistance
 * @param currentA its current, A
 * @param volts    its voltage, V
 * @param watts    heat in it, W
 * @param share    heat over that of the whole loop (open voltage times current), 0 to 1; in a loop without branches also its
 *                 share of the loop's resistance
 */
public record LoopShare(FaultBranch branch, double currentA, double volts, double watts, double share) {

    static LoopShare of(FaultBranch branch, double currentA, double loopW) {
        double watts = currentA * currentA * branch.ohm();
        return new LoopShare(branch, currentA, currentA * branch.ohm(), watts, loopW > 0 ? watts / loopW : 0);
    }
}
