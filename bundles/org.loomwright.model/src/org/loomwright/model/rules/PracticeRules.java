// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.practice.Choice;
import org.loomwright.model.practice.Limit;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.practice.RuleSetting;

/** What holds for practice files beyond their structure: only known limits, choices and rules, in the known units. */
public final class PracticeRules {
    private final Map<String, Limit> knownLimits = new HashMap<>();
    private final Map<String, Choice> knownChoices = new HashMap<>();
    private final Set<String> knownRules;

    /**
     * Rules against what the program knows.
     *
     * @param common     the built-in practice, which names every limit and choice
     * @param knownRules slugs of the rules that can be switched; empty to accept any
     */
    public PracticeRules(Practice common, Set<String> knownRules) {
        common.getLimits().forEach(limit -> knownLimits.put(limit.getName(), limit));
        common.getChoices().forEach(choice -> knownChoices.put(choice.getName(), choice));
        this.knownRules = Set.copyOf(knownRules);
    }

    /** All violations of a practice file, structure included. */
    public List<Violation> check(Practice practice) {
        List<Violation> found = new ArrayList<>(StructureRules.check(practice));
        for (Limit limit : practice.getLimits()) {
            Limit known = knownLimits.get(limit.getName());
            if (known == null) {
                found.add(Violation.blocking("practice-limit", limit, "name", "no study knows a limit " + limit.getName(),
                        "a limit that the common practice lists"));
            } else if (limit.getUnit() != null && !limit.getUnit().equals(known.getUnit())) {
                found.add(Violation.blocking("practice-unit", limit, "unit",
                        limit.getName() + " is given in " + limit.getUnit(), known.getUnit()));
            } else if (limit.getValue() != null && limit.getValue().signum() < 0 && !"degC".equals(known.getUnit())) {
                found.add(Violation.blocking("range", limit, "value",
                        limit.getName() + " of " + limit.getValue().toPlainString() + " cannot be meant", "0 or more"));
            }
        }
        for (Choice choice : practice.getChoices()) {
            if (!knownChoices.containsKey(choice.getName())) {
                found.add(Violation.blocking("practice-choice", choice, "name", "no study knows a choice " + choice.getName(),
                        "one of " + String.join(", ", new java.util.TreeSet<>(knownChoices.keySet()))));
            }
        }
        for (RuleSetting setting : practice.getRuleSettings()) {
            if (!knownRules.isEmpty() && setting.getRule() != null && !knownRules.contains(setting.getRule())) {
                found.add(Violation.blocking("practice-rule", setting, "rule", "there is no rule " + setting.getRule(),
                        "the slug of a rule, as printed with a finding"));
            }
        }
        return found;
    }
}
