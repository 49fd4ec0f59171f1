// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.earth.StrapLoss;
import org.loomwright.engine.earth.StructureLevels;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.Finding;

/**
 * What the engine found out about one plan, by element id, for drawings. May be shared by threads; figures of a case are worked
 * out when the case is first asked for.
 */
public final class StudyView {
    private final CheckContext context;
    private final List<Finding> findings;
    private final FindingIndex index;
    private final Map<String, SolvedCase> cases = new LinkedHashMap<>();
    private final Map<String, CaseView> views = new LinkedHashMap<>();
    private final Map<List<String>, LostStrap> losses = new LinkedHashMap<>();

    private StudyView(CheckContext context, List<Finding> findings) {
        this.context = context;
        this.findings = List.copyOf(findings);
        index = new FindingIndex(findings);
        context.cases().forEach(solved -> cases.put(solved.state().name(), solved));
    }

    /** The view of what was checked. */
    public static StudyView of(CheckContext context, List<Finding> findings) {
        return new StudyView(context, findings);
    }

    /** The view of a plan with its cases solved. */
    public static StudyView of(Plan plan, List<SolvedCase> cases, List<Finding> findings) {
        return new StudyView(new CheckContext(plan, cases, NetFinder.find(plan)), findings);
    }

    /** The plan. */
    public Plan plan() {
        return context.plan();
    }

    /** All findings, in the order of the study. */
    public List<Finding> findings() {
        return findings;
    }

    /** Names of the cases, in the plan's order. */
    public List<String> caseNames() {
        return List.copyOf(cases.keySet());
    }

    /** Figures of a case; null when there is no such case. */
    public synchronized CaseView caseView(String name) {
        SolvedCase solved = cases.get(name);
        return solved == null ? null : views.computeIfAbsent(name, n -> CaseView.of(context, solved));
    }

    /**
     * What a lost strap comes to in a case; null when there is no such strap or case.
     *
     * @param bond id of the strap
     */
    public synchronized LostStrap lost(String caseName, String bond) {
        SolvedCase solved = cases.get(caseName);
        int index = plan().bonds().stream().map(Plan.Bond::id).toList().indexOf(bond);
        if (solved == null || index < 0) {
            return null;
        }
        return losses.computeIfAbsent(List.of(caseName, bond), key -> {
            StrapLoss loss = StrapLoss.of(context, solved, index, new BasicMonitor());
            return new LostStrap(bond, shown(bond), CaseView.of(context, loss.after()), loss.harmful(), loss.told(), loss.more());
        });
    }

    /** Mark of an element for the findings about itself; null for none. */
    public FindingMark mark(String element) {
        return FindingIndex.mark(index.of(element));
    }

    /** Mark of an element for the findings about itself and what lies in it: ways, terminals, cores; null for none. */
    public FindingMark markWithin(String element) {
        return FindingIndex.mark(index.within(element));
    }

    /** Mark of one finding. */
    public FindingMark mark(Finding finding) {
        return FindingIndex.mark(List.of(finding));
    }

    /** Mark of an element that causes findings elsewhere; null for none. */
    public FindingMark causeMark(String element) {
        return FindingIndex.causeMark(index.causedBy(element));
    }

    /** Terminal against which potentials are given, as shown to people; empty without a case. */
    public String reference() {
        return context.cases().isEmpty() || plan().terminals().isEmpty() ? ""
                : shown(plan().terminals().get(StructureLevels.minus(plan(), context.cases().get(0))).id());
    }

    /** How an id is shown to people, for example {@code -W12}. */
    public String shown(String element) {
        return context.names().shown(element);
    }
}
