// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** What is selected in one editor: ids of elements, held once for all that show it. */
public final class ElementSelection {
    private final List<Consumer<Set<String>>> listeners = new ArrayList<>();
    private Set<String> ids = Set.of();

    /** Ids, in the order in which they were selected. */
    public Set<String> ids() {
        return ids;
    }

    /** The one selected element; null for none or several. */
    public String single() {
        return ids.size() == 1 ? ids.iterator().next() : null;
    }

    /** Selects these and nothing else; listeners are told only when that is a change. */
    public void set(Collection<String> wanted) {
        Set<String> next = new LinkedHashSet<>(wanted);
        if (!next.equals(ids)) {
            ids = java.util.Collections.unmodifiableSet(next);
            List.copyOf(listeners).forEach(listener -> listener.accept(ids));
        }
    }

    /** Adds a listener. */
    public void listen(Consumer<Set<String>> listener) {
        listeners.add(listener);
    }

    /** Removes a listener. */
    public void unlisten(Consumer<Set<String>> listener) {
        listeners.remove(listener);
    }
}
