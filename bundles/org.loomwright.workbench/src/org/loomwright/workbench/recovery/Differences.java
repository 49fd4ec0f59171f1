// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.vehicle.Vehicle;

/**
 * In what elements two states of a vehicle differ. Parts without a name count as their nearest element that has one.
 *
 * @param added   elements that only the second has, in order
 * @param removed elements that only the first has, in order
 * @param changed elements that both have and that are not the same, in order
 */
record Differences(List<String> added, List<String> removed, List<String> changed) {
    private static final int SHOWN = 4;

    Differences {
        added = List.copyOf(added);
        removed = List.copyOf(removed);
        changed = List.copyOf(changed);
    }

    /** From one state to another. */
    static Differences between(Vehicle first, Vehicle second) {
        Map<String, String> before = described(first);
        Map<String, String> after = described(second);
        List<String> added = new ArrayList<>();
        List<String> changed = new ArrayList<>();
        after.forEach((id, text) -> {
            String was = before.get(id);
            if (was == null) {
                added.add(id);
            } else if (!was.equals(text)) {
                changed.add(id);
            }
        });
        List<String> removed = before.keySet().stream().filter(id -> !after.containsKey(id)).toList();
        return new Differences(added, removed, changed);
    }

    /** True when there are none. */
    boolean none() {
        return added.isEmpty() && removed.isEmpty() && changed.isEmpty();
    }

    /** In words: a few elements by name, the others by their number. */
    String words() {
        List<String> parts = new ArrayList<>();
        part(Messages.Differences_changed, changed, parts);
        part(Messages.Differences_added, added, parts);
        part(Messages.Differences_removed, removed, parts);
        return parts.isEmpty() ? Messages.Differences_none : String.join("; ", parts);
    }

    private static void part(String what, List<String> ids, List<String> parts) {
        if (!ids.isEmpty()) {
            List<String> names = new ArrayList<>(ids.stream().limit(SHOWN).map(Differences::name).toList());
            if (ids.size() > SHOWN) {
                names.add(Messages.bound(Messages.Differences_others, ids.size() - SHOWN));
            }
            parts.add(Messages.bound(what, String.join(", ", names)));
        }
    }

    private static String name(String id) {
        String last = id.substring(id.lastIndexOf('/') + 1);
        return last.isEmpty() ? Messages.Differences_vehicle : last;
    }

    private static Map<String, String> described(Vehicle vehicle) {
        Map<String, StringBuilder> texts = new TreeMap<>();
        describe(vehicle, texts);
        for (Iterator<EObject> all = vehicle.eAllContents(); all.hasNext();) {
            describe(all.next(), texts);
        }
        Map<String, String> described = new TreeMap<>();
        texts.forEach((id, text) -> described.put(id, text.toString()));
        return described;
    }

    private static void describe(EObject object, Map<String, StringBuilder> texts) {
        String id = Fragments.of(object);
        int unnamed = id.indexOf("/@");
        String element = unnamed >= 0 ? id.substring(0, unnamed) : id.startsWith("@") ? Fragments.ROOT : id;
        StringBuilder text = texts.computeIfAbsent(element, key -> new StringBuilder());
        text.append(object.eClass().getName()).append(' ');
        for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
            boolean contained = feature instanceof EReference reference && reference.isContainment();
            if (!contained && !feature.isTransient() && !feature.isDerived() && object.eIsSet(feature)) {
                text.append(feature.getName()).append('=').append(value(object.eGet(feature))).append(' ');
            }
        }
    }

    private static String value(Object value) {
        if (value instanceof List<?> many) {
            return String.join(",", many.stream().map(Differences::value).toList());
        }
        return value instanceof EObject target ? Fragments.of(target) : String.valueOf(value);
    }
}
