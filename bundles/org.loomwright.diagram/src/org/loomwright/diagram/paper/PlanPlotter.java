// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.diagram.plan.PlanScene;
import org.loomwright.diagram.plan.PlanView;
import org.loomwright.diagram.plan.PlotScale;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.services.DrawingRequest;

/** Draws plans to scale on sheets of paper; the text keeps its size whatever the scale. */
public final class PlanPlotter {
    /** Scales to choose from, 1 : n, of those that ISO 5455 recommends (recalled). */
    private static final List<Integer> SCALES = List.of(10, 20, 50);
    /** Px of paper for each px of the drawing: text as on a screen at 100 %, or at the least size. */
    private static final List<Double> TEXT_SCALES = List.of(1.0, SheetMaker.LEAST_SCALE);
    /** Columns and rows of sheets to try, the fewest first; what takes more is refused. */
    private static final int[][] GRIDS = {{1, 1}, {2, 1}, {2, 2}, {3, 2}, {3, 3}, {4, 3}, {4, 4}, {6, 4}, {6, 6}, {9, 6}, {9, 9},
        {12, 9}, {12, 12}};
    /** Grids on which a scale is tried in vain before it is given up: more ground further out does not help. */
    private static final int TRIES = 5;
    private final DrawingRequest request;
    private final PlanView view;
    private final TextMeasure type;

    /** Plots what is asked for, seen from a side. */
    public PlanPlotter(DrawingRequest request, PlanView view, TextMeasure type) {
        this.request = request;
        this.view = view;
        this.type = type;
    }

    /**
     * The plan on as few sheets as take it, at the largest scale there.
     *
     * @param wanted paper; of any size the smallest that takes the plan on one sheet, A3 where none does
     * @param scale  n of 1 : n; 0 to choose 1 : 10, 1 : 20 or 1 : 50
     * @throws IllegalArgumentException when it cannot be drawn so, with the reason
     */
    public SheetSet sheets(PaperChoice wanted, int scale, TitleData title) {
        List<Integer> scales = scale > 0 ? List.of(scale) : SCALES;
        Map<Integer, Integer> withoutRoom = new TreeMap<>();
        for (int[] grid : GRIDS) {
            boolean one = grid[0] * grid[1] == 1;
            PaperChoice papers = one || wanted.size() != null ? wanted : new PaperChoice(PaperSize.A3, wanted.landscape());
            for (Paper paper : papers.papers()) {
                for (double textScale : one ? TEXT_SCALES : List.of(SheetMaker.LEAST_SCALE)) {
                    for (int n : scales) {
                        if (one || withoutRoom.getOrDefault(n, 0) < TRIES) {
                            SheetSet found = at(paper, grid, textScale, n, title, withoutRoom);
                            if (found != null) {
                                return found;
                            }
                        }
                    }
                }
            }
        }
        int last = scales.get(scales.size() - 1);
        throw new IllegalArgumentException(withoutRoom.containsKey(last)
                ? "at 1:" + last + " the devices find no room around the vehicle; choose a larger scale"
                : "the plan does not fit on " + GRIDS[GRIDS.length - 1][0] + " by " + GRIDS[GRIDS.length - 1][1]
                        + " sheets; choose larger paper or a smaller scale than 1:" + last);
    }

    private SheetSet at(Paper paper, int[] grid, double textScale, int n, TitleData title, Map<Integer, Integer> withoutRoom) {
        Bounds field = paper.field();
        double overlap = Tile.OVERLAP_MM * Paper.PX_PER_MM;
        double width = (grid[0] * (field.width() - overlap) + overlap) / textScale;
        double height = (grid[1] * (field.height() - overlap) + overlap) / textScale;
        PlotScale plot = new PlotScale(width, height, Paper.PX_PER_MM / n / textScale);
        if (width < PlotScale.LEAST_WIDTH_PX || !PlanScene.takes(plot, request, view)) {
            return null;
        }
        Scene drawing = PlanScene.at(plot, request, view, type);
        if (drawing == null) {
            withoutRoom.merge(n, 1, Integer::sum);
            return null;
        }
        return new SheetMaker(type).sheets(BareScene.of(drawing), plot.ground(), paper, textScale, title, "1:" + n);
    }
}
