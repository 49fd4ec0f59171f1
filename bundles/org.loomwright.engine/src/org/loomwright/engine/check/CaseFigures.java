// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;

/** The figures of one case as the rules judge them, for those who show them. Used by one thread. */
public final class CaseFigures {
    private final CheckContext context;
    private final SolvedCase solved;
    private final LoadDrops drops;

    /** Figures of a case of a context. */
    public CaseFigures(CheckContext context, SolvedCase solved) {
        this.context = context;
        this.solved = solved;
        drops = new LoadDrops(context);
    }

    /**
     * The drop of a load after the definition of the design.
     *
     * @param dropV    voltage lost between the source's terminals and the load's, V
     * @param nominalV nominal voltage of its domain, V
     * @param limit    permitted share of the nominal voltage, 0 to 1
     */
    public record Drop(double dropV, double nominalV, double limit) {
        /** Drop over nominal voltage. */
        public double share() {
            return dropV / nominalV;
        }
    }

    /** The drop of a load (index in elements); null when it is off or not supplied or belongs to no domain. */
    public Drop drop(int demand) {
        LoadDrops.LoadDrop drop = drops.of(solved, demand);
        return drop == null ? null : new Drop(drop.breakdown().dropV(), drop.nominalV(), drop.limit());
    }

    /** Heating current of a protective device (index in elements), A. */
    public double heatingA(int protector) {
        return load(protector).heatingA(solved);
    }

    /** Rating of a protective device (index in elements) at its ambient, A. */
    public double ratingA(int protector) {
        ProtectorLoad load = load(protector);
        return load.protector().ratingA() * load.ambientFactor(solved);
    }

    private ProtectorLoad load(int protector) {
        return new ProtectorLoad(context, protector, (Plan.Protector) context.plan().elements().get(protector));
    }
}
