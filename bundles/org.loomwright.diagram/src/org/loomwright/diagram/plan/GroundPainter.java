// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Veil;

/**
 * Zones and structure. Of zones and bodies that lie over each other the larger one, or one well inside it, is seen; of what lies
 * below or above only the hidden edge is drawn, as the file does not say at which height they are.
 */
final class GroundPainter {
    /** How the name of the outline's group begins. */
    static final String OUTLINE = "outline of the vehicle";
    private static final double SMALL_SHARE = 0.5;
    private static final double OVER_SHARE = 0.1;
    private static final double SOLID_BODY_SHARE = 0.12;
    private static final Stroke HIDDEN = Stroke.dashed(Role.INK3, 0.75, 5.0, 3.0);
    private final PlanContent content;
    private final Projection to;
    private final SceneBuilder scene;
    private final Set<Integer> tinted;

    GroundPainter(PlanContent content, Projection to, SceneBuilder scene) {
        this.content = content;
        this.to = to;
        this.scene = scene;
        tinted = tinted();
    }

    void paint() {
        for (int z : byArea(zoneOutlines())) {
            PlanContent.Zone zone = content.zones().get(z);
            scene.group(Group.Kind.GROUND, zone.id(), "zone " + zone.label() + " " + zone.environment());
            List<Point> area = to.at(zone.outline());
            if (tinted.contains(z)) {
                tint(zone, area);
            } else {
                scene.area(null, HIDDEN, area);
            }
        }
        scene.group(null, content.stated() ? OUTLINE : OUTLINE + ", not stated in the file");
        scene.area(null, content.stated() ? Stroke.solid(Role.INK2, 2) : Stroke.dashed(Role.INK2, 1.5, 12.0, 3.0, 2.0, 3.0),
                to.at(content.vehicle()));
        List<Outline> seen = new ArrayList<>();
        for (int b : byArea(content.bodies().stream().map(PlanContent.Body::outline).toList())) {
            body(content.bodies().get(b), seen);
        }
    }

    /** With a pattern, so that it prints. */
    private void tint(PlanContent.Zone zone, List<Point> area) {
        scene.area(Fill.solid(zone.hot() ? Role.HOT : zone.wet() ? Role.WET : Role.DRY), null, area);
        if (zone.hot()) {
            scene.area(Fill.hatched(new Veil(Role.WARNING, 0.3)), null, area);
        }
        if (zone.wet()) {
            scene.area(Fill.dotted(new Veil(Role.SELECT, 0.45)), null, area);
        }
    }

    private void body(PlanContent.Body body, List<Outline> seen) {
        boolean small = body.outline().area() < SOLID_BODY_SHARE * content.vehicle().area();
        boolean hidden = !small && seen.stream().anyMatch(larger -> body.outline().coveredBy(larger) > OVER_SHARE);
        scene.group(Group.Kind.GROUND, body.id(), "body " + body.name());
        scene.area(small ? Fill.solid(Role.BODY) : null, hidden ? HIDDEN : Stroke.solid(small ? Role.INK3 : Role.INK2, 1.25),
                to.at(body.outline()));
        if (!small && !hidden) {
            seen.add(body.outline());
        }
    }

    /** Zones whose ground is seen. */
    Set<PlanContent.Zone> seen() {
        Set<PlanContent.Zone> seen = new LinkedHashSet<>();
        tinted.forEach(z -> seen.add(content.zones().get(z)));
        return seen;
    }

    /**
     * Zones side by side come before those that lie across several others, such as the ground below the floor; of zones one
     * over the other the one with more places.
     */
    private Set<Integer> tinted() {
        Set<Integer> chosen = new LinkedHashSet<>();
        int[] crossed = IntStream.range(0, content.zones().size()).map(this::crossed).toArray();
        List<Integer> order = byArea(zoneOutlines()).stream()
                .sorted(Comparator.comparingInt((Integer z) -> crossed[z]).thenComparing(z -> -content.zones().get(z).places())).toList();
        for (int z : order) {
            Outline own = content.zones().get(z).outline();
            boolean free = chosen.stream().map(t -> content.zones().get(t).outline()).noneMatch(other -> across(own, other)
                    || own.coveredBy(other) > OVER_SHARE && own.area() > SMALL_SHARE * other.area()
                    || other.coveredBy(own) > OVER_SHARE && other.area() > SMALL_SHARE * own.area());
            if (free) {
                chosen.add(z);
            }
        }
        return chosen;
    }

    private int crossed(int zone) {
        Outline own = content.zones().get(zone).outline();
        return own == null ? 0 : (int) content.zones().stream().filter(other -> other.outline() != null && across(own, other.outline())).count();
    }

    /** They share ground, and neither lies within the other. */
    private static boolean across(Outline a, Outline b) {
        double ab = a.coveredBy(b);
        double ba = b.coveredBy(a);
        return StrictMath.max(ab, ba) > OVER_SHARE && StrictMath.max(ab, ba) < 1 - OVER_SHARE;
    }

    private List<Outline> zoneOutlines() {
        List<Outline> outlines = new ArrayList<>();
        content.zones().forEach(zone -> outlines.add(zone.outline()));
        return outlines;
    }

    private static List<Integer> byArea(List<Outline> outlines) {
        return IntStream.range(0, outlines.size()).filter(i -> outlines.get(i) != null).boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> -outlines.get(i).area()).thenComparing(i -> i)).toList();
    }
}
