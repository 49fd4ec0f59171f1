// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Quantity;

/** How the rating of a conductor comes about. */
final class RatingDerivation {
    private RatingDerivation() {
    }

    /** The rating in the case that it belongs to. */
    static Derivation of(Plan plan, int conductor, ConductorRating rating) {
        Plan.Conductor core = plan.conductors().get(conductor);
        return new Derivation("rating Iz", Quantity.of(rating.correctedA(), "A"),
                "Itable x Fgrouping x sqrt((Tmax - Ta) / (Tmax - Tref))",
                List.of(new Derivation.Input("S", Quantity.of(core.sectionMm2(), "mm2"), plan.cables().get(core.cable()).id()),
                        new Derivation.Input("Itable", Quantity.of(rating.tableA(), "A"), rating.source()),
                        new Derivation.Input("together", Quantity.of(rating.counted(), "1"),
                                "counted as the grouping table counts"),
                        new Derivation.Input("Fgrouping", Quantity.of(rating.groupingFactor(), "1"), rating.source()),
                        new Derivation.Input("Ta", Quantity.of(rating.ambientC(), "degC"), "hottest zone along it in the case"),
                        new Derivation.Input("Tref", Quantity.of(rating.referenceC(), "degC"), rating.source()),
                        new Derivation.Input("Tmax", Quantity.of(rating.maxC(), "degC"), rating.source())),
                rating.source());
    }
}
