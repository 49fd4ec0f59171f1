// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.heat.Ratings;

/** Ratings of cables with each section on offer; they do not depend on what is chosen, so they are kept between rounds. */
final class OptionRatings {
    private final Map<Asked, ConductorRating[]> known = new HashMap<>();

    /** What the ratings of a cable's sections depend on. */
    private record Asked(int cable, double ambientC, int counted) {
    }

    /**
     * A rating for each section.
     *
     * @param index    of the cable in the plan
     * @param options  sections on offer for it, always the same
     * @param ambientC ambient, degrees Celsius
     * @param counted  circuits or conductors together, as its table counts
     */
    ConductorRating[] of(Plan.Cable cable, int index, List<Plan.SectionOption> options, double ambientC, int counted) {
        return known.computeIfAbsent(new Asked(index, ambientC, counted), asked -> {
            ConductorRating[] ratings = new ConductorRating[options.size()];
            for (int o = 0; o < ratings.length; o++) {
                ratings[o] = Ratings.of(cable, options.get(o).sectionMm2(), ambientC, counted);
            }
            return ratings;
        });
    }
}
