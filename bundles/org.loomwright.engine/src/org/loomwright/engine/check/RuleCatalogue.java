// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All rules of the check, in the order in which the catalogue of rules lists them. */
public final class RuleCatalogue {
    private static final List<String> ORDER = List.of("incomplete", "load-undervolt", "load-overvolt", "drop-class", "start-dip",
            "no-operating-point", "state-cycling", "charge-path-drop", "relay-pull-in", "conductor-hot", "ambient-class",
            "section-min", "parallel-share", "first-device-distance", "device-rating", "overload-band", "short-withstand",
            "fault-clears", "breaking-capacity", "device-loading", "inrush-margin", "selectivity", "both-ends",
            "return-protected", "case-earth", "device-in-return", "way-limit", "contact-duty",
            "terminal-fit", "pin-load", "wrong-net", "half-tap", "no-supply", "isolator-effect",
            "return-policy", "body-unbonded", "bond-loading", "shunt-bypass", "battery-mix", "battery-limit", "link-current",
            "cutout-sense", "zone-fit");

    private final List<Rule> rules;

    private RuleCatalogue(List<Rule> rules) {
        this.rules = rules;
    }

    /** The rules of the check. */
    public static RuleCatalogue standard() {
        List<Rule> all = new ArrayList<>(OperatingRules.all());
        all.addAll(StructureRules.all());
        all.addAll(ProtectionRules.all());
        return of(all);
    }

    /**
     * A catalogue of these rules, sorted as the catalogue lists them.
     *
     * @throws IllegalArgumentException when two rules share a slug or a slug has no place in the catalogue
     */
    public static RuleCatalogue of(List<Rule> rules) {
        List<Rule> sorted = new ArrayList<>();
        for (Rule rule : rules) {
            if (!ORDER.contains(rule.slug())) {
                throw new IllegalArgumentException("rule " + rule.slug() + " has no place in the catalogue");
            }
            if (sorted.stream().anyMatch(other -> other.slug().equals(rule.slug()))) {
                throw new IllegalArgumentException("two rules are called " + rule.slug());
            }
            sorted.add(rule);
        }
        sorted.sort((a, b) -> Integer.compare(ORDER.indexOf(a.slug()), ORDER.indexOf(b.slug())));
        return new RuleCatalogue(List.copyOf(sorted));
    }

    /** The rules in order. */
    public List<Rule> rules() {
        return rules;
    }

    /** Slugs of the rules in order, to which a practice's settings and a vehicle's waivers can refer. */
    public List<String> slugs() {
        return rules.stream().map(Rule::slug).toList();
    }

    /** The rule of that slug. */
    public Optional<Rule> find(String slug) {
        return rules.stream().filter(rule -> rule.slug().equals(slug)).findFirst();
    }
}
