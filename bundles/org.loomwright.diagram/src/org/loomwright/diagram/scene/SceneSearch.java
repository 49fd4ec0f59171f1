// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Finds elements of a scene by designation or by a text beside them. */
public final class SceneSearch {
    private SceneSearch() {
    }

    /**
     * Elements that a text is about: those whose designation it is first, then those in whose designation, name or label it
     * occurs, in the order of painting; upper and lower case are the same, and the minus of a designation may be left out.
     */
    public static List<String> find(Scene scene, String text) {
        String wanted = plain(text);
        Set<String> exact = new LinkedHashSet<>();
        Set<String> part = new LinkedHashSet<>();
        for (Group group : scene.groups()) {
            if (group.element() == null || wanted.isEmpty()) {
                continue;
            }
            String own = plain(group.element().substring(group.element().lastIndexOf('/') + 1));
            if (own.equals(wanted) || plain(group.element()).equals(wanted)) {
                exact.add(group.element());
            } else if (own.contains(wanted) || group.name() != null && plain(group.name()).contains(wanted)
                    || group.marks().stream().anyMatch(mark -> mark instanceof Mark.Text label
                            && plain(label.text()).contains(wanted))) {
                part.add(group.element());
            }
        }
        exact.addAll(part);
        return List.copyOf(exact);
    }

    private static String plain(String text) {
        String lower = text.strip().toLowerCase(Locale.ROOT).replace('\u2212', '-');
        return lower.startsWith("-") ? lower.substring(1) : lower;
    }
}
