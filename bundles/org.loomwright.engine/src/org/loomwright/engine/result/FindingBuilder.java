// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.result;

import java.util.ArrayList;
import java.util.List;

/** Collects the parts of a {@link Finding}; used by one thread and thrown away. */
public final class FindingBuilder {
    private final String rule;
    private final Severity severity;
    private final String element;
    private final String title;
    private String caseName;
    private Quantity is;
    private Quantity wanted;
    private final List<String> why = new ArrayList<>();
    private final List<Cause> causes = new ArrayList<>();
    private final List<Mend> mends = new ArrayList<>();
    private final List<Derivation> derivations = new ArrayList<>();

    FindingBuilder(String rule, Severity severity, String element, String title) {
        this.rule = rule;
        this.severity = severity;
        this.element = element;
        this.title = title;
    }

    /** Names the case it was found in. */
    public FindingBuilder inCase(String name) {
        caseName = name;
        return this;
    }

    /** Gives the figure found and the limit; both in the same unit. */
    public FindingBuilder figures(Quantity found, Quantity limit) {
        is = found;
        wanted = limit;
        return this;
    }

    /** Adds a sentence on how it comes about. */
    public FindingBuilder because(String sentence) {
        why.add(sentence);
        return this;
    }

    /** Adds an element that brings it about. */
    public FindingBuilder causedBy(String elementId, String what, Quantity share) {
        causes.add(new Cause(elementId, what, share));
        return this;
    }

    /** Adds a proposal. */
    public FindingBuilder mend(Mend mend) {
        mends.add(mend);
        return this;
    }

    /** Adds a derivation. */
    public FindingBuilder derived(Derivation derivation) {
        derivations.add(derivation);
        return this;
    }

    /** The finding. */
    public Finding build() {
        return new Finding(rule, severity, element, caseName, title, is, wanted, why, causes, mends, derivations, null);
    }
}
