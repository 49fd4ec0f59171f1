// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.engine.result.Severity;

/**
 * The limits and choices in force, each with its source. A limit that no practice gives is an error of the practice,
 * never a number in code.
 *
 * @param name    name of the practice file
 * @param limits  limits by name, for example {@code drop-class.critical}
 * @param choices choices by name
 * @param rules   rules switched off or given another severity, by slug
 */
public record Practice(String name, Map<String, Limit> limits, Map<String, Choice> choices, Map<String, RuleSetting> rules) {
    public Practice {
        limits = java.util.Collections.unmodifiableMap(new TreeMap<>(limits));
        choices = java.util.Collections.unmodifiableMap(new TreeMap<>(choices));
        rules = java.util.Collections.unmodifiableMap(new TreeMap<>(rules));
    }

    /**
     * One number.
     *
     * @param value  the number, in {@code unit}
     * @param source where it comes from, with the practice that gives it
     */
    public record Limit(String name, double value, String unit, String source) {
    }

    /** One choice between accepted ways. */
    public record Choice(String name, String value, String source) {
    }

    /** How one rule is set; severity null keeps the rule's own. */
    public record RuleSetting(String rule, boolean enabled, Severity severity, String reason) {
    }

    /**
     * The limit of that name.
     *
     * @throws MissingLimitException when neither the practice nor one that it is based on gives it
     */
    public Limit limit(String limitName) {
        Limit limit = limits.get(limitName);
        if (limit == null) {
            throw new MissingLimitException(name, limitName);
        }
        return limit;
    }

    /** The value of the limit of that name; see {@link #limit}. */
    public double value(String limitName) {
        return limit(limitName).value();
    }

    /** The choice of that name, which must be one of the allowed ones. */
    public String choice(String choiceName, List<String> allowed) {
        Choice choice = choices.get(choiceName);
        if (choice == null) {
            throw new MissingLimitException(name, choiceName);
        }
        if (!allowed.contains(choice.value())) {
            throw new IllegalArgumentException("practice " + name + ": " + choiceName + " is '" + choice.value()
                    + "'; expected one of " + String.join(", ", allowed));
        }
        return choice.value();
    }

    /** True unless the practice switches the rule off. */
    public boolean enabled(String rule) {
        RuleSetting setting = rules.get(rule);
        return setting == null || setting.enabled();
    }

    /** The practice lacks a value that a study needs. */
    public static final class MissingLimitException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        MissingLimitException(String practice, String limit) {
            super("practice " + practice + " and those it is based on give no value for " + limit);
        }
    }
}
