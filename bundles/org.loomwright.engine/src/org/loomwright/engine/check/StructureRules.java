// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;

/** The rules on terminals, nets, returns, batteries and places. */
final class StructureRules {
    private StructureRules() {
    }

    static List<Rule> all() {
        return List.of(new IncompleteRule(), new DeviceInReturnRule(), new WayLimitRule(), new ContactDutyRule(),
                new TerminalFitRule(), new PinLoadRule(), new WrongNetRule(), new HalfTapRule(), new NoSupplyRule(),
                new IsolatorEffectRule(), new ReturnPolicyRule(), new BodyUnbondedRule(), new ShuntBypassRule(),
                new BatteryMixRule(), new BatteryLimitRule(), new LinkCurrentRule(), new CutoutSenseRule(), new ZoneFitRule());
    }
}
