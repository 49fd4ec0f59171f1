// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What differs between two scenes of one diagram.
 *
 * @param sheet   the sheet's size or the order of painting has changed, so that all has to be painted anew
 * @param before  groups that are gone or were different
 * @param after   groups that are new or different
 */
public record SceneDiff(boolean sheet, List<Group> before, List<Group> after) {
    private record Key(String element, Group.Kind kind, int nth) {
    }

    public SceneDiff {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    /** The difference. */
    public static SceneDiff between(Scene old, Scene now) {
        Map<Key, Group> was = keyed(old);
        Map<Key, Group> is = keyed(now);
        List<Group> before = new ArrayList<>();
        List<Group> after = new ArrayList<>();
        was.forEach((key, group) -> {
            if (!group.equals(is.get(key))) {
                before.add(group);
            }
        });
        is.forEach((key, group) -> {
            if (!group.equals(was.get(key))) {
                after.add(group);
            }
        });
        List<Key> kept = was.keySet().stream().filter(is::containsKey).toList();
        List<Key> keptNow = is.keySet().stream().filter(was::containsKey).toList();
        return new SceneDiff(old.widthPx() != now.widthPx() || old.heightPx() != now.heightPx() || !kept.equals(keptNow),
                before, after);
    }

    /** True when both look the same. */
    public boolean none() {
        return !sheet && before.isEmpty() && after.isEmpty();
    }

    /** Elements of which something has changed. */
    public Set<String> elements() {
        Set<String> ids = new LinkedHashSet<>();
        before.stream().map(Group::element).filter(id -> id != null).forEach(ids::add);
        after.stream().map(Group::element).filter(id -> id != null).forEach(ids::add);
        return ids;
    }

    /** The part of the sheet to be painted anew; null for none. */
    public Bounds damaged(TextMeasure type) {
        Bounds all = null;
        for (List<Group> side : List.of(before, after)) {
            for (Group group : side) {
                Bounds room = type.bounds(group);
                all = room == null ? all : room.with(all);
            }
        }
        return all;
    }

    private static Map<Key, Group> keyed(Scene scene) {
        Map<Key, Group> keyed = new LinkedHashMap<>();
        Map<Key, Integer> counts = new LinkedHashMap<>();
        for (Group group : scene.groups()) {
            String element = group.element() == null ? group.name() : group.element();
            int nth = counts.merge(new Key(element, group.kind(), 0), 1, Integer::sum);
            keyed.put(new Key(element, group.kind(), nth), group);
        }
        return keyed;
    }
}
