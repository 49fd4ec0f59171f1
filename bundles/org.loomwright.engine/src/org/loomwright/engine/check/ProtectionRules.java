// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.protection.ProtectionStudy;
import org.loomwright.engine.result.StudyResult;

/** The rules that need fault currents and time-current curves. */
public final class ProtectionRules {
    private ProtectionRules() {
    }

    static List<Rule> all() {
        return List.of(new OverloadBandRule(), new ShortWithstandRule(), new FaultClearsRule(), new BreakingCapacityRule(),
                new InrushMarginRule(), new SelectivityRule(), new BothEndsRule(), new ReturnProtectedRule(),
                new CaseEarthRule());
    }

    /** Number of these rules. */
    public static int count() {
        return all().size();
    }

    /**
     * What these rules alone find; the explainer answers for the figures of {@link CheckContext#protection}.
     *
     * @throws java.util.concurrent.CancellationException when the monitor is cancelled
     * @throws org.loomwright.engine.assembly.Practice.MissingLimitException when the practice lacks a limit
     */
    public static StudyResult judge(CheckContext context, Monitor monitor) {
        return new StudyResult(ProtectionStudy.STUDY, context.plan().vehicle(), context.plan().arrangement(),
                new RuleRun(RuleCatalogue.of(all())).findings(context, monitor), List.of(), context.protection().explainer());
    }
}
