// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.export.bom.BomItem.Group;
import org.loomwright.model.parts.ConsumablePart;
import org.loomwright.model.parts.PartsLibrary;

/**
 * Consumables by the counts of what is bought or made anew. Only those count whose part states what it is used for ({@code per});
 * others are a person's choice and are left to them. Of consumables of one name the nearest library's holds, so that a workshop's
 * own library can take the place of the one it uses. Pieces are rounded up to whole ones, lengths to full centimetres.
 *
 * @param ends        connected conductor ends
 * @param cableMetres metres of cable
 * @param ways        ways with a protector fitted
 * @param passages    passages
 */
record ConsumableNeeds(int ends, BigDecimal cableMetres, int ways, int passages) {

    /** Adds the consumables of the libraries and of those they use. */
    void addTo(Needs needs, List<PartsLibrary> libraries) {
        if (needs.isEmpty()) {
            return;
        }
        for (ConsumablePart part : nearest(libraries)) {
            if (part.getPer() == null || part.getPer().isBlank()) {
                continue;
            }
            BigDecimal times = times(part.getPer().strip());
            if (times == null) {
                needs.leaveOut("consumable " + part.getName() + ": it is counted per '" + part.getPer()
                        + "'; expected end, cable-metre, way, passage or vehicle");
            } else {
                add(needs, new BomItem(Group.CONSUMABLE, part, null, ""), times, part.getQuantity());
            }
        }
    }

    private static void add(Needs needs, BomItem item, BigDecimal times, BigDecimal each) {
        BigDecimal quantity = (each == null ? times : times.multiply(each))
                .setScale(BomItem.PIECES.equals(item.unit()) ? 0 : 2, RoundingMode.CEILING);
        if (quantity.signum() > 0) {
            needs.add(item, quantity);
        }
    }

    private BigDecimal times(String per) {
        return switch (per) {
            case "end" -> BigDecimal.valueOf(ends);
            case "cable-metre" -> cableMetres;
            case "way" -> BigDecimal.valueOf(ways);
            case "passage" -> BigDecimal.valueOf(passages);
            case "vehicle" -> BigDecimal.ONE;
            default -> null;
        };
    }

    private static Iterable<ConsumablePart> nearest(List<PartsLibrary> libraries) {
        Map<String, ConsumablePart> found = new LinkedHashMap<>();
        Set<PartsLibrary> seen = new LinkedHashSet<>();
        Deque<PartsLibrary> open = new ArrayDeque<>(libraries);
        while (!open.isEmpty()) {
            PartsLibrary library = open.removeFirst();
            if (seen.add(library)) {
                library.getConsumables().forEach(part -> found.putIfAbsent(part.getName(), part));
                open.addAll(library.getUses());
            }
        }
        return found.values();
    }
}
