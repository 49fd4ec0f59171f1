// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;

/** The rules on operating points, heat, distances and protective devices. */
final class OperatingRules {
    private OperatingRules() {
    }

    static List<Rule> all() {
        return List.of(new LoadUndervoltRule(), new LoadOvervoltRule(), new DropClassRule(), new StartDipRule(),
                new NoOperatingPointRule(), new StateCyclingRule(), new ChargePathDropRule(), new RelayPullInRule(),
                new ConductorHotRule(), new AmbientClassRule(), new SectionMinRule(), new ParallelShareRule(),
                new FirstDeviceDistanceRule(), new DeviceRatingRule(), new DeviceLoadingRule(), new BondLoadingRule());
    }
}
