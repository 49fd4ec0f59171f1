// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.engine.result.Severity;
import org.loomwright.model.practice.Choice;
import org.loomwright.model.practice.Limit;
import org.loomwright.model.practice.RuleSetting;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Reads the practice in force: the one adopted, the ones it is based on, and at the end the common practice. The first that
 * gives a value wins.
 */
final class PracticeReader {
    private final Map<String, Practice.Limit> limits = new TreeMap<>();
    private final Map<String, Practice.Choice> choices = new TreeMap<>();
    private final Map<String, Practice.RuleSetting> rules = new TreeMap<>();
    private final Problems problems;

    private PracticeReader(Practice base, Problems problems) {
        limits.putAll(base.limits());
        choices.putAll(base.choices());
        rules.putAll(base.rules());
        this.problems = problems;
    }

    /** A practice on its own. */
    static Practice read(org.loomwright.model.practice.Practice practice, Problems problems) {
        PracticeReader reader = new PracticeReader(new Practice(practice.getName(), Map.of(), Map.of(), Map.of()), problems);
        reader.put(practice);
        return new Practice(practice.getName(), reader.limits, reader.choices, reader.rules);
    }

    /**
     * The practice in force.
     *
     * @param adopted practice adopted, or null for the common one
     * @param common  the common practice
     * @param vehicle the vehicle; its own return policy, when it states one, goes before the practice's
     */
    static Practice read(org.loomwright.model.practice.Practice adopted, Practice common, Vehicle vehicle,
            Problems problems) {
        PracticeReader reader = new PracticeReader(common, problems);
        List<org.loomwright.model.practice.Practice> chain = reader.chain(adopted);
        for (int i = chain.size() - 1; i >= 0; i--) {
            reader.put(chain.get(i));
        }
        if (vehicle.isSetReturnPolicy()) {
            String name = "return-policy";
            reader.choices.put(name,
                    new Practice.Choice(name, vehicle.getReturnPolicy().getLiteral(), "set on vehicle " + vehicle.getName()));
        }
        String name = chain.isEmpty() ? common.name() : chain.get(0).getName();
        return new Practice(name, reader.limits, reader.choices, reader.rules);
    }

    private List<org.loomwright.model.practice.Practice> chain(org.loomwright.model.practice.Practice adopted) {
        List<org.loomwright.model.practice.Practice> chain = new ArrayList<>();
        org.loomwright.model.practice.Practice at = adopted;
        while (at != null && !at.eIsProxy()) {
            if (chain.contains(at)) {
                problems.add(ModelIds.ROOT, "practice " + at.getName() + " is based on itself; expected a practice of its own");
                break;
            }
            chain.add(at);
            at = at.getBasedOn();
        }
        return chain;
    }

    private void put(org.loomwright.model.practice.Practice practice) {
        for (Limit limit : practice.getLimits()) {
            put(practice.getName(), limit);
        }
        for (Choice choice : practice.getChoices()) {
            if (choice.getName() != null && choice.getValue() != null) {
                choices.put(choice.getName(), new Practice.Choice(choice.getName(), choice.getValue(),
                        source(practice.getName(), choice.getSource())));
            }
        }
        for (RuleSetting setting : practice.getRuleSettings()) {
            Severity severity = setting.isSetSeverity()
                    ? Severity.valueOf(setting.getSeverity().getLiteral().toUpperCase(java.util.Locale.ROOT))
                    : null;
            if (setting.getRule() == null) {
                continue;
            }
            rules.put(setting.getRule(), new Practice.RuleSetting(setting.getRule(),
                    !Boolean.FALSE.equals(setting.getEnabled()), severity, setting.getReason()));
        }
    }

    private void put(String practice, Limit limit) {
        if (limit.getName() == null || limit.getValue() == null) {
            return;
        }
        Practice.Limit base = limits.get(limit.getName());
        String unit = limit.getUnit() == null && base != null ? base.unit() : limit.getUnit();
        if (base != null && !base.unit().equals(unit)) {
            problems.add(ModelIds.ROOT, "practice " + practice + ": " + limit.getName() + " is given in " + unit
                    + "; expected " + base.unit() + ". The value of " + base.source() + " holds instead");
            return;
        }
        limits.put(limit.getName(), new Practice.Limit(limit.getName(), limit.getValue().doubleValue(),
                unit == null ? "1" : unit, source(practice, limit.getSource())));
    }

    private static String source(String practice, String stated) {
        return "practice " + practice + ": " + (stated == null || stated.isEmpty() ? "no source stated" : stated);
    }
}
