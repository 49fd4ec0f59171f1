// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.loomwright.model.parts.Part;
import org.loomwright.model.parts.PartsLibrary;

/** Everything an arrangement needs, gathered by item, and what could not be counted. */
final class Needs {
    private static final Comparator<BomItem> ORDER = Comparator.comparing(BomItem::group)
            .thenComparing(item -> text(item.part().getName()))
            .thenComparing(BomItem::sectionMm2, Comparator.nullsFirst(Comparator.naturalOrder()))
            .thenComparing(BomItem::colour);
    private final Map<BomItem, List<Need>> items = new LinkedHashMap<>();
    private final List<String> uncounted = new ArrayList<>();

    /**
     * One piece that is needed.
     *
     * @param quantity in the item's unit
     * @param cutM     length it is cut to, m, or null
     */
    record Need(BigDecimal quantity, BigDecimal cutM) {
    }

    /** So much of an item, in its unit. */
    void add(BomItem item, BigDecimal quantity) {
        add(item, new Need(quantity, null));
    }

    /** A length of an item that is bought by the metre. */
    void addLength(BomItem item, BigDecimal metres) {
        add(item, new Need(metres, metres));
    }

    /** A piece with its length, m, or null when that is not known. */
    void addPiece(BomItem item, BigDecimal cutM) {
        add(item, new Need(BigDecimal.ONE, cutM));
    }

    private void add(BomItem item, Need need) {
        items.computeIfAbsent(item, key -> new ArrayList<>()).add(need);
    }

    /** Something that is missing from the list, in a sentence for people. */
    void leaveOut(String sentence) {
        uncounted.add(sentence);
    }

    boolean isEmpty() {
        return items.isEmpty();
    }

    List<String> uncounted() {
        return uncounted;
    }

    /** Items by group, then name, section and colour. */
    List<BomItem> sorted() {
        return items.keySet().stream().sorted(ORDER).toList();
    }

    /** Sum of what is needed, in the item's unit. */
    BigDecimal total(BomItem item) {
        return items.get(item).stream().map(Need::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Lengths to cut, m, longest first. */
    List<BigDecimal> cuts(BomItem item) {
        return items.get(item).stream().map(Need::cutM).filter(Objects::nonNull).sorted(Comparator.reverseOrder()).toList();
    }

    /** Name of a part, with its library where another part of the list has the same name. */
    String name(Part part) {
        Set<Part> alike = new LinkedHashSet<>();
        for (BomItem item : items.keySet()) {
            if (Objects.equals(item.part().getName(), part.getName())) {
                alike.add(item.part());
            }
        }
        return alike.size() > 1 && part.eContainer() instanceof PartsLibrary library ? library.getName() + "/" + part.getName()
                : text(part.getName());
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
