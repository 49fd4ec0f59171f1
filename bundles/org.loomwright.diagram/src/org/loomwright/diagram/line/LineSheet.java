// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.services.DrawingRequest;

/**
 * Puts the line diagram onto one sheet: in one piece where that needs the smallest sheet, else in sections, one for each
 * distribution point with much behind it.
 */
final class LineSheet {
    private static final double LEFT = 40;
    private static final double TOP = 94;
    private static final double FOOT = 76;
    private static final double LEAST_WIDTH = 760;
    /** Rows of loads up to which a distribution point stays in one section with what feeds it; each is tried. */
    private static final int[] MOST_ROWS = {400, 24, 14, 8, 4, 1};
    /** A drawing in one piece is easier to follow: each end of a cut line must save this share of the sheet's side. */
    private static final double COST_OF_STUB = 0.001;
    /** Nodes beyond which a section is not laid out in one piece, since that takes seconds and gives a tall sheet. */
    private static final int MOST_NODES = 60;
    private final DrawingRequest request;
    private final Drafting drafting;
    private final SupplyGraph supply;
    private final LoadColumn column;

    private record Choice(List<SectionLayout> sections, Packing packing, double cost) {
    }

    LineSheet(DrawingRequest request, Drafting drafting) {
        this.request = request;
        this.drafting = drafting;
        supply = SupplyGraph.of(drafting);
        column = new LoadColumn(drafting);
    }

    Scene scene() {
        Choice choice = choose();
        SheetChoices choices = SheetChoices.of(request.vehicle(), request.arrangement());
        List<SectionDrawing> drawings = new ArrayList<>();
        Bounds content = new Bounds(LEFT, TOP, LEFT + choice.packing().width(), TOP + choice.packing().height());
        for (int i = 0; i < choice.sections().size(); i++) {
            Point corner = choice.packing().corners().get(i).moved(LEFT, TOP);
            SectionDrawing drawing = new SectionDrawing(drafting, choice.sections().get(i), corner, choices, column);
            content = content.with(drawing.room());
            drawings.add(drawing);
        }
        IdleRow idle = new IdleRow(drafting, supply.idle(), content.right() - LEFT);
        double height = content.bottom() + (idle.height() > 0 ? 30 + idle.height() : 0) + foot();
        SheetSize size = SheetSize.around(StrictMath.max(content.right() + 40, LEAST_WIDTH), height);
        String title = (request.vehicle().getLabel() == null ? request.vehicle().getName() : request.vehicle().getLabel())
                + " \u2014 line diagram";
        SceneBuilder scene = new SceneBuilder(title, size.widthPx(), size.heightPx());
        SheetGrid grid = SheetGrid.of(size);
        new LineFrame(request, drafting, scene, size).paint(title, LEFT);
        if (drawings.size() > 1) {
            grid.paint(scene);
        }
        drawings.forEach(drawing -> drawing.paint(scene, stub -> drawings.stream().map(each -> each.stub(stub))
                .filter(Objects::nonNull).map(grid::field).findFirst().orElse("")));
        idle.paint(scene, LEFT, content.bottom() + 40);
        return scene.build();
    }

    private double foot() {
        return FOOT + (drafting.colours().scale() == null ? 0 : LineFrame.OVERLAY_PX);
    }

    /** The partition that needs the smallest sheet, ends of cut lines counted against it. */
    private Choice choose() {
        Partition partition = Partition.of(drafting, supply);
        Set<Partition.Sections> tried = new LinkedHashSet<>();
        for (int rows : MOST_ROWS) {
            tried.add(partition.merged(rows));
        }
        LayoutMemory memory = new LayoutMemory();
        Choice best = null;
        Partition.Sections finest = tried.stream().reduce((a, b) -> b).orElseThrow();
        for (Partition.Sections cut : tried) {
            List<Section> sections = Section.of(drafting, supply, cut);
            if (cut != finest && sections.stream().anyMatch(section -> section.supply().nodes().size() > MOST_NODES)) {
                continue;
            }
            List<SectionLayout> layouts = sections.stream().map(section -> new SectionLayout(section, column, memory)).toList();
            Packing packing = Packing.of(layouts, LEFT + 40, TOP + foot());
            double side = SheetSize.around(StrictMath.max(packing.width() + LEFT + 40, LEAST_WIDTH),
                    packing.height() + TOP + foot()).heightPx();
            double cost = side * (1 + COST_OF_STUB * sections.stream().mapToInt(Section::stubs).sum());
            if (best == null || cost < best.cost()) {
                best = new Choice(layouts, packing, cost);
            }
        }
        return best;
    }

    static Stroke hair() {
        return Stroke.solid(Role.HAIR, 1);
    }
}
