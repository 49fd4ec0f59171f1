// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;
import org.loomwright.engine.assembly.AssemblyProblem;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.OperatingPoint;
import org.loomwright.engine.nets.Nets;
import org.loomwright.engine.protection.ProtectionTable;

/**
 * What the rules look at.
 *
 * @param plan     the plan
 * @param cases    its cases, solved, in the plan's order
 * @param nets     what is connected to what, whatever the case
 * @param problems what could not be assembled
 * @param circuits what the protective devices part from each other
 * @param names    how elements are named in findings
 * @param studies  studies that several rules need
 */
public record CheckContext(Plan plan, List<SolvedCase> cases, Nets nets, List<AssemblyProblem> problems, Circuits circuits,
        ElementNames names, SharedStudies studies) {
    public CheckContext {
        cases = List.copyOf(cases);
        problems = List.copyOf(problems);
    }

    /** A context whose circuits and names are derived from the plan. */
    public CheckContext(Plan plan, List<SolvedCase> cases, Nets nets, List<AssemblyProblem> problems) {
        this(plan, cases, nets, problems, new SharedStudies());
    }

    /** The same with studies that its monitor can cancel. */
    public CheckContext(Plan plan, List<SolvedCase> cases, Nets nets, List<AssemblyProblem> problems, SharedStudies studies) {
        this(plan, cases, nets, problems, Circuits.of(plan), ElementNames.of(plan), studies);
    }

    /** The same for a plan without problems. */
    public CheckContext(Plan plan, List<SolvedCase> cases, Nets nets) {
        this(plan, cases, nets, List.of());
    }

    /** The same plan, with these of its cases only. */
    public CheckContext withCases(List<SolvedCase> some) {
        return new CheckContext(plan, some, nets, problems, circuits, names, studies.anew());
    }

    /** The cases that have an operating point; figures of the others say nothing about limits. */
    public List<SolvedCase> settled() {
        return cases.stream().filter(solved -> solved.running().point().status() == OperatingPoint.Status.SOLVED).toList();
    }

    /** Faults and clearing of every conductor and device, worked out once. */
    public ProtectionTable protection() {
        return studies.protection(this);
    }

    /** Limits and choices in force. */
    public Practice practice() {
        return plan.practice();
    }
}
