// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Plan.ReturnPolicy;

/** Whether loads may return through the structure, by the vehicle's policy and that of the bodies. */
final class ReturnPermits {
    private static final String CHOICE = "return-policy";

    private final Plan plan;
    private final ReturnPolicy general;

    ReturnPermits(Plan plan) {
        this.plan = plan;
        general = switch (plan.practice().choice(CHOICE, List.of("allowed", "listedLoads", "forbidden"))) {
            case "allowed" -> ReturnPolicy.ALLOWED;
            case "listedLoads" -> ReturnPolicy.LISTED_LOADS;
            default -> ReturnPolicy.FORBIDDEN;
        };
    }

    /** Whether any body may take the return of a load. */
    boolean permitted(int demand) {
        for (int body = 0; body < plan.bodies().size(); body++) {
            if (permitted(demand, body)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a body may take the return of a load. */
    boolean permitted(int demand, int body) {
        ReturnPolicy own = plan.bodies().get(body).policy();
        ReturnPolicy policy = own == null ? general : own;
        boolean listed = "structure".equals(plan.devices().get(plan.elements().get(demand).device()).returnPolicy());
        return policy == ReturnPolicy.ALLOWED || policy == ReturnPolicy.LISTED_LOADS && listed;
    }
}
