// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.loomwright.model.parts.Named;
import org.loomwright.model.parts.PartsPackage;

/**
 * Children by name. Small containers are searched; for large ones a table is made on first use and kept right by
 * listening to the container and its children: one such listener serves a whole resource.
 */
final class ScopeIndex extends AdapterImpl {
    private static final int SMALL = 12;

    private final Map<EObject, Map<String, List<EObject>>> tables = new IdentityHashMap<>();
    private int visits;

    /** The children of that name in the order of the model; usually one or none. */
    static List<EObject> children(EObject container, String name) {
        return container.eResource() instanceof VehicleResource resource ? resource.scopes().named(container, name)
                : search(container, name);
    }

    List<EObject> named(EObject container, String name) {
        Map<String, List<EObject>> table = tables.get(container);
        if (table == null) {
            if (size(container) <= SMALL) {
                visits++;
                return search(container, name);
            }
            table = makeTable(container);
        }
        return table.getOrDefault(name, List.of());
    }

    void clear() {
        tables.clear();
    }

    /** How many children were looked at so far; grows in proportion to the number of look-ups, not to its square. */
    int visits() {
        return visits;
    }

    /** Takes note of a child that was added without a notification. */
    void addedSilently(EObject container, EObject child) {
        Map<String, List<EObject>> table = tables.get(container);
        if (table != null) {
            put(container, table, child);
        }
    }

    private static int size(EObject container) {
        int size = 0;
        for (EReference containment : container.eClass().getEAllContainments()) {
            size += containment.isMany() ? ((Collection<?>) container.eGet(containment)).size() : 1;
        }
        return size;
    }

    private static List<EObject> search(EObject container, String name) {
        List<EObject> found = List.of();
        for (EObject child : container.eContents()) {
            if (child instanceof Named named && name.equals(named.getName())) {
                if (found.isEmpty()) {
                    found = List.of(child);
                } else {
                    found = new ArrayList<>(found);
                    found.add(child);
                }
            }
        }
        return found;
    }

    private Map<String, List<EObject>> makeTable(EObject container) {
        Map<String, List<EObject>> table = new HashMap<>();
        tables.put(container, table);
        listen(container);
        for (EObject child : container.eContents()) {
            visits++;
            if (child instanceof Named named) {
                listen(child);
                if (named.getName() != null) {
                    List<EObject> others = table.get(named.getName());
                    if (others == null) {
                        table.put(named.getName(), List.of(child));
                    } else {
                        List<EObject> all = new ArrayList<>(others);
                        all.add(child);
                        table.put(named.getName(), all);
                    }
                }
            }
        }
        return table;
    }

    private void listen(EObject object) {
        if (!object.eAdapters().contains(this)) {
            object.eAdapters().add(this);
        }
    }

    @Override
    public void notifyChanged(Notification message) {
        if (!(message.getNotifier() instanceof EObject notifier) || message.isTouch()) {
            return;
        }
        if (message.getFeature() == PartsPackage.Literals.NAMED__NAME) {
            EObject container = notifier.eContainer();
            Map<String, List<EObject>> table = container == null ? null : tables.get(container);
            if (table != null) {
                renamed(container, table, notifier, message.getOldStringValue());
            }
        } else if (message.getFeature() instanceof EReference reference && reference.isContainment()) {
            Map<String, List<EObject>> table = tables.get(notifier);
            if (table != null) {
                contained(notifier, table, message);
            }
        }
    }

    private void renamed(EObject container, Map<String, List<EObject>> table, EObject child, String oldName) {
        if (oldName == null || remove(container, table, child, oldName)) {
            put(container, table, child);
        }
    }

    private void contained(EObject container, Map<String, List<EObject>> table, Notification message) {
        if (message.getEventType() == Notification.ADD && message.getNewValue() instanceof EObject child) {
            put(container, table, child);
        } else if (message.getEventType() == Notification.REMOVE && message.getOldValue() instanceof EObject child) {
            if (child instanceof Named named && named.getName() != null) {
                remove(container, table, child, named.getName());
            }
        } else {
            tables.remove(container);
        }
    }

    private void put(EObject container, Map<String, List<EObject>> table, EObject child) {
        if (child instanceof Named named) {
            listen(child);
            if (named.getName() != null && table.putIfAbsent(named.getName(), List.of(child)) != null) {
                tables.remove(container);
            }
        }
    }

    /** False when the table had to be given up. */
    private boolean remove(EObject container, Map<String, List<EObject>> table, EObject child, String name) {
        List<EObject> bucket = table.get(name);
        if (bucket != null && bucket.size() == 1 && bucket.get(0) == child) {
            table.remove(name);
            return true;
        }
        tables.remove(container);
        return false;
    }
}
