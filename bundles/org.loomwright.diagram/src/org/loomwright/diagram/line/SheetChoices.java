// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.diagram.scene.Point;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.DiagramKind;
import org.loomwright.model.vehicle.Sheet;
import org.loomwright.model.vehicle.SheetItem;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Positions and bends that a person chose for a line diagram. A position is the upper left corner of the device's shape on the
 * sheet, px; bends are points of a cable's line.
 */
final class SheetChoices {
    private final Map<String, Point> positions = new LinkedHashMap<>();
    private final Map<String, List<Point>> bends = new LinkedHashMap<>();

    private SheetChoices() {
    }

    static SheetChoices of(Vehicle vehicle, Arrangement arrangement) {
        SheetChoices choices = new SheetChoices();
        for (Sheet sheet : vehicle.getSheets()) {
            if (sheet.isSetDiagram() && sheet.getDiagram() == DiagramKind.LINE && sheet.getArrangement() == arrangement) {
                sheet.getItems().forEach(choices::add);
            }
        }
        return choices;
    }

    /** Upper left corner of an element; null when a person did not place it. */
    Point position(String element) {
        return positions.get(element);
    }

    /** Bends of a wire by its key; null when a person did not choose them. */
    List<Point> bends(String wireKey) {
        int core = wireKey.lastIndexOf('#');
        return core < 0 ? null : bends.get(wireKey.substring(0, core));
    }

    boolean empty() {
        return positions.isEmpty() && bends.isEmpty();
    }

    private void add(SheetItem item) {
        if (item.getElement() == null) {
            return;
        }
        if (item.getX() != null && item.getY() != null) {
            positions.put(item.getElement(), new Point(item.getX().doubleValue(), item.getY().doubleValue()));
        }
        List<Point> points = points(item.getBends());
        if (points != null) {
            bends.put(item.getElement(), points);
        }
    }

    /** Reads {@code x,y x,y}; null for nothing or what cannot be read. */
    static List<Point> points(String text) {
        if (text == null || text.isBlank()) {
            return null;
        }
        List<Point> points = new ArrayList<>();
        for (String pair : text.strip().split("\\s+")) {
            String[] xy = pair.split(",");
            if (xy.length != 2 || !xy[0].matches("-?[0-9]+(\\.[0-9]+)?") || !xy[1].matches("-?[0-9]+(\\.[0-9]+)?")) {
                return null;
            }
            points.add(new Point(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])));
        }
        return points;
    }
}
