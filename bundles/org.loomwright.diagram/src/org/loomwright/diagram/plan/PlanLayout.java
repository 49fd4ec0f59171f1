// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.services.SheetChoices;

/**
 * Where everything of a plan is drawn.
 *
 * @param sheet  the sheet
 * @param to     from mm to px
 * @param ductPx width of a duct
 * @param places points of the places
 * @param runs   lines of the runs
 * @param lanes  cables in the runs
 * @param seats  seats of the devices
 * @param unplaced number of devices that found no ground on the largest sheet
 * @param room   ground taken so far, for the labels
 */
record PlanLayout(PlanSheet sheet, Projection to, double ductPx, List<Point> places, List<List<Point>> runs, Lanes lanes,
        List<Seat> seats, int unplaced, Room room) {
    /** Width of a duct, px. */
    static final double DUCT_PX = 24;
    private static final double CLEAR_PX = 2;
    /** Orders in which the seats are tried on one sheet; what found no ground comes first in the next. */
    private static final int ATTEMPTS = 4;
    private static final double PLACE_PX = 6;

    /**
     * Lays a plan out on the first sheet on which every device finds ground.
     *
     * @param sheets sheets to try; one that every vehicle fits on at the least
     * @param badged  ids of devices with findings
     * @param choices offsets of plates and bends that a person chose, mm of the vehicle as drawn
     */
    static PlanLayout of(PlanContent content, List<PlanSheet> sheets, TextMeasure type, Set<String> badged,
            SheetChoices choices) {
        PlanLayout last = null;
        for (PlanSheet sheet : sheets) {
            last = on(sheet, content, type, badged, choices);
            if (last.seats().stream().noneMatch(seat -> seat == null)) {
                return last;
            }
        }
        return last.withoutGaps(content.devices().size());
    }

    private PlanLayout withoutGaps(int devices) {
        List<Seat> found = seats.stream().filter(seat -> seat != null).toList();
        int seated = found.stream().mapToInt(seat -> seat.form().cells().size()).sum();
        return new PlanLayout(sheet, to, ductPx, places, runs, lanes, found, devices - seated, room);
    }

    private static PlanLayout on(PlanSheet sheet, PlanContent content, TextMeasure type, Set<String> badged,
            SheetChoices choices) {
        Projection to = sheet.projection(content.vehicle());
        List<Point> places = content.places().stream().map(place -> to.at(place.spot())).toList();
        List<List<Point>> runs = new RunRouter(DUCT_PX, sheet.field(), Bounds.of(to.at(content.vehicle()))).route(places,
                content.runs(), bends(content, to, choices));
        Room room = new Room(sheet.field());
        room.edge(to.at(content.vehicle()));
        content.bodies().forEach(body -> room.edge(to.at(body.outline())));
        content.zones().stream().filter(zone -> zone.outline() != null).forEach(zone -> room.edge(to.at(zone.outline())));
        for (int r = 0; r < runs.size(); r++) {
            List<Point> line = runs.get(r);
            for (int i = 1; i < line.size(); i++) {
                room.takeDuct(r, RunRouter.duct(line.get(i - 1), line.get(i), DUCT_PX).grown(CLEAR_PX));
            }
        }
        PlanDimensions.ground(content, to, sheet).forEach(room::take);
        List<SeatPlanner.Wish> wishes = wishes(content, places, runs, new SeatForms(content, type, to.pxPerMm(), badged),
                new Chosen(choices, to));
        wishes.forEach(wish -> room.take(Bounds.around(wish.anchor(), PLACE_PX / 2)));
        Set<Integer> first = new TreeSet<>();
        Room taken = room;
        List<Seat> seats = List.of();
        for (int attempt = 0; attempt < ATTEMPTS && (attempt == 0 || seats.contains(null)); attempt++) {
            for (int w = 0; w < seats.size(); w++) {
                if (seats.get(w) == null) {
                    first.add(w);
                }
            }
            taken = room.copy();
            seats = new SeatPlanner(taken).seats(wishes, first);
        }
        for (int r = 0; r < runs.size(); r++) {
            List<Point> line = runs.get(r);
            taken.takeDuct(r, beyond(line.get(1), line.get(0)));
            taken.takeDuct(r, beyond(line.get(line.size() - 2), line.get(line.size() - 1)));
        }
        return new PlanLayout(sheet, to, DUCT_PX, places, runs, new Lanes(content, runs, DUCT_PX - 5), seats, 0, taken);
    }

    /** Ground around the end of a duct, which is drawn beyond its place, to be kept free of texts. */
    private static Bounds beyond(Point from, Point end) {
        double length = StrictMath.max(0.01, from.distance(end));
        return RunRouter.duct(end, end.moved((end.x() - from.x()) / length * DUCT_PX / 2,
                (end.y() - from.y()) / length * DUCT_PX / 2), DUCT_PX).grown(CLEAR_PX);
    }

    private static Map<Integer, List<Point>> bends(PlanContent content, Projection to, SheetChoices choices) {
        Map<Integer, List<Point>> bends = new TreeMap<>();
        for (int r = 0; r < content.runs().size(); r++) {
            List<Point> chosen = new Chosen(choices, to).bends(content.runs().get(r).id());
            if (!chosen.isEmpty()) {
                bends.put(r, chosen);
            }
        }
        return bends;
    }

    /** What a person chose, in px of the sheet. */
    private record Chosen(SheetChoices choices, Projection to) {
        /** Bends of an element; empty for none. */
        List<Point> bends(String element) {
            List<Point> mm = choices.bends(element);
            return mm == null ? List.of() : mm.stream().map(point -> to.at(new Spot(point.x(), point.y()))).toList();
        }

        SeatPlanner.Wish wish(String element, Point anchor, List<SeatForm> forms, List<Integer> ownRuns) {
            Point mm = choices.position(element);
            return new SeatPlanner.Wish(anchor, forms, ownRuns,
                    mm == null ? null : anchor.moved(mm.x() * to.pxPerMm(), -mm.y() * to.pxPerMm()), bends(element));
        }
    }

    private static List<SeatPlanner.Wish> wishes(PlanContent content, List<Point> places, List<List<Point>> runs,
            SeatForms forms, Chosen chosen) {
        Map<Integer, List<Integer>> atPlace = new TreeMap<>();
        Map<Point, List<Integer>> onRun = new LinkedHashMap<>();
        for (int d = 0; d < content.devices().size(); d++) {
            PlanContent.Device device = content.devices().get(d);
            if (device.place() >= 0) {
                atPlace.computeIfAbsent(device.place(), place -> new ArrayList<>()).add(d);
            } else {
                onRun.computeIfAbsent(along(runs.get(device.run()), device.share()), spot -> new ArrayList<>()).add(d);
            }
        }
        List<SeatPlanner.Wish> wishes = new ArrayList<>();
        atPlace.forEach((place, devices) -> wishes.add(chosen.wish(content.places().get(place).id(), places.get(place),
                forms.of(devices, place), IntStream.range(0, content.runs().size()).filter(r -> content.runs().get(r).from() == place
                        || content.runs().get(r).to() == place).boxed().toList())));
        onRun.forEach((spot, devices) -> {
            List<String> ids = devices.stream().map(device -> content.devices().get(device).id()).toList();
            String named = ids.stream().filter(id -> chosen.choices().position(id) != null).findFirst().orElse(ids.get(0));
            wishes.add(chosen.wish(named, spot, forms.of(devices, -1), List.of(-1, -1)));
        });
        return wishes;
    }

    /** The point at a share of a line's length. */
    static Point along(List<Point> line, double share) {
        double total = 0;
        for (int i = 1; i < line.size(); i++) {
            total += line.get(i - 1).distance(line.get(i));
        }
        double left = share * total;
        for (int i = 1; i < line.size(); i++) {
            double piece = line.get(i - 1).distance(line.get(i));
            if (left <= piece && piece > 0) {
                double t = left / piece;
                return new Point(line.get(i - 1).x() + t * (line.get(i).x() - line.get(i - 1).x()),
                        line.get(i - 1).y() + t * (line.get(i).y() - line.get(i - 1).y()));
            }
            left -= piece;
        }
        return line.get(line.size() - 1);
    }
}
