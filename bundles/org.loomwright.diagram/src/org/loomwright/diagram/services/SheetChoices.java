// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.loomwright.diagram.scene.Point;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.DiagramKind;
import org.loomwright.model.vehicle.Sheet;
import org.loomwright.model.vehicle.SheetItem;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Positions and bends that a person chose for a diagram, by element, as they stand in the file. Those of the sheet that all
 * arrangements share count where the arrangement's own sheet says nothing.
 */
public final class SheetChoices {
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
    private final Map<String, Point> positions = new LinkedHashMap<>();
    private final Map<String, List<Point>> bends = new LinkedHashMap<>();

    private SheetChoices() {
    }

    /**
     * The choices for a diagram.
     *
     * @param arrangement arrangement that is drawn; null for what all share
     */
    public static SheetChoices of(Vehicle vehicle, Arrangement arrangement, DiagramKind diagram) {
        SheetChoices choices = new SheetChoices();
        for (Arrangement owner : arrangement == null ? new Arrangement[] {null} : new Arrangement[] {null, arrangement}) {
            for (Sheet sheet : vehicle.getSheets()) {
                if (sheet.isSetDiagram() && sheet.getDiagram() == diagram && sheet.getArrangement() == owner) {
                    sheet.getItems().forEach(choices::add);
                }
            }
        }
        return choices;
    }

    /** No choices. */
    public static SheetChoices none() {
        return new SheetChoices();
    }

    /** Where an element stands; null when a person did not say. */
    public Point position(String element) {
        return positions.get(element);
    }

    /** Bends of an element's line; null when a person did not choose them. */
    public List<Point> bends(String element) {
        return bends.get(element);
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
    private static List<Point> points(String text) {
        if (text == null || text.isBlank()) {
            return null;
        }
        List<Point> points = new ArrayList<>();
        for (String pair : text.strip().split("\\s+")) {
            String[] xy = pair.split(",", -1);
            if (xy.length != 2 || !NUMBER.matcher(xy[0]).matches() || !NUMBER.matcher(xy[1]).matches()) {
                return null;
            }
            points.add(new Point(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])));
        }
        return List.copyOf(points);
    }
}
