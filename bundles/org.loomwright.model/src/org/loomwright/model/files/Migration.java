// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.w3c.dom.Document;

/** Brings files of older formats to the current one, step by step, as trees of XML before any object is made. */
public final class Migration {
    /** From one format version to the next. */
    public interface Step {
        /** The version the step starts from. */
        FormatVersion from();

        /** The version it leads to. */
        FormatVersion to();

        /** Rewrites the tree; the step also sets the root's namespace and format. */
        void apply(Document document);
    }

    private final List<Step> steps;

    /** A migration by these steps. */
    public Migration(List<Step> steps) {
        this.steps = List.copyOf(steps);
    }

    /** The migration of this program: version 1.0 is the first, so there is nothing to migrate yet. */
    public static Migration standard() {
        return new Migration(List.of());
    }

    /** The steps from a version to the current one in order; empty when there is no way. */
    public Optional<List<Step>> way(FormatVersion from) {
        List<Step> way = new ArrayList<>();
        FormatVersion version = from;
        while (version.compareTo(FormatVersion.CURRENT) < 0) {
            FormatVersion here = version;
            Optional<Step> next = steps.stream()
                    .filter(step -> step.from().equals(here) && step.to().compareTo(here) > 0).findFirst();
            if (next.isEmpty()) {
                return Optional.empty();
            }
            way.add(next.get());
            version = next.get().to();
        }
        return version.equals(FormatVersion.CURRENT) ? Optional.of(way) : Optional.empty();
    }
}
