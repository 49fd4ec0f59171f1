// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.DeviceProtection;
import org.loomwright.engine.protection.Feed;
import org.loomwright.engine.protection.ShortTransient;

/**
 * What a time-current chart of a vehicle is about: a protective device and a conductor that it protects.
 *
 * @param protector element of the plan; -1 for a conductor without a device before it
 * @param conductor index in the plan; -1 for a device that protects none
 */
public record ChartSubject(int protector, int conductor) {

    /**
     * What an element stands for: a cable or core, a fuse or breaker, its box, or a load with the conductor that feeds it.
     *
     * @param element id of an element of the plan
     * @return one subject; several for a box with several devices; none when nothing of it can be shown
     */
    public static List<ChartSubject> of(CheckContext context, String element) {
        List<ChartSubject> found = conductors(context, element);
        if (found.isEmpty()) {
            found = devices(context, element);
        }
        return found.isEmpty() ? loads(context, element) : found;
    }

    /** Supply cores first; of several cores of a cable the first one that is fed. */
    private static List<ChartSubject> conductors(CheckContext context, String element) {
        Plan plan = context.plan();
        ChartSubject supply = null;
        ChartSubject other = null;
        for (ConductorProtection row : context.protection().conductors()) {
            Plan.Conductor core = plan.conductors().get(row.conductor());
            boolean named = core.id().equals(element) || plan.cables().get(core.cable()).id().equals(element);
            if (named && row.overload() != null) {
                ChartSubject subject = new ChartSubject(row.overload().protector(), row.conductor());
                supply = supply == null && row.supply() ? subject : supply;
                other = other == null && !row.supply() ? subject : other;
            }
        }
        return supply != null ? List.of(supply) : other != null ? List.of(other) : List.of();
    }

    private static List<ChartSubject> devices(CheckContext context, String element) {
        Plan plan = context.plan();
        List<ChartSubject> found = new ArrayList<>();
        for (DeviceProtection row : context.protection().devices()) {
            Plan.Element device = plan.elements().get(row.protector());
            if (device.id().equals(element) || context.names().element(row.protector()).equals(element)
                    || plan.devices().get(device.device()).id().equals(element)) {
                found.add(new ChartSubject(row.protector(), nearestToItsLimit(context, row)));
            }
        }
        return found;
    }

    private static List<ChartSubject> loads(CheckContext context, String element) {
        Plan plan = context.plan();
        for (ConductorProtection row : context.protection().conductors()) {
            for (Feed feed : row.feeds()) {
                int device = plan.terminals().get(feed.farTerminal()).device();
                if (device >= 0 && plan.devices().get(device).id().equals(element)) {
                    return List.of(new ChartSubject(row.overload().protector(), row.conductor()));
                }
            }
        }
        return List.of();
    }

    /** Of the conductors next behind a device, those first that it alone protects. */
    private static int nearestToItsLimit(CheckContext context, DeviceProtection row) {
        int found = -1;
        double most = Double.NEGATIVE_INFINITY;
        for (int c : row.conductorsBelow()) {
            ConductorProtection below = context.protection().conductor(c);
            ShortTransient heat = below.heat();
            boolean own = below.overload() != null && below.overload().protector() == row.protector();
            double share = !own ? -2 : heat == null || Double.isNaN(heat.limitC()) ? -1 : heat.peakC() / heat.limitC();
            if (found < 0 || share > most) {
                found = c;
                most = share;
            }
        }
        return found;
    }
}
