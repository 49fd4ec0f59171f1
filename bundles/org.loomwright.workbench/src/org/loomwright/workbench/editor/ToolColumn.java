// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.tool.SelectTool;
import org.loomwright.diagram.tool.Tool;
import org.loomwright.workbench.diagram.MarkImage;
import org.loomwright.workbench.diagram.SceneCanvas;
import org.loomwright.workbench.gesture.DrawingCommand;

/** The tools at the left edge of a drawing. */
final class ToolColumn extends Composite {
    private static final int ICON_PX = 20;
    private static final double STEP = 1.25;
    private final ToolBar bar;
    private final Map<ToolItem, List<Mark>> icons = new LinkedHashMap<>();
    private ToolItem select;
    private ToolItem places;
    private ToolItem runs;
    private ToolItem parts;
    private Theme theme = Theme.light();

    ToolColumn(Composite parent) {
        super(parent, SWT.NONE);
        setLayout(new FillLayout());
        bar = new ToolBar(this, SWT.VERTICAL | SWT.FLAT);
    }

    /** Acts on the drawings of a pane. */
    void on(DrawingPane pane) {
        Stroke pen = Stroke.solid(Role.INK2, 1.5);
        select = tool(pane, DrawingCommand.SELECT, List.of(new Mark.Area(points(5, 3, 15, 12, 10, 12.5, 7.5, 17),
                Fill.solid(Role.PLATE), pen)));
        tool(pane, DrawingCommand.MARQUEE, List.of(new Mark.Area(points(3, 5, 17, 5, 17, 15, 3, 15), null,
                Stroke.dashed(Role.INK2, 1.5, 3.0, 2.0))));
        tool(pane, DrawingCommand.PAN, List.of(line(pen, 10, 2, 10, 18), line(pen, 2, 10, 18, 10),
                line(pen, 7, 5, 10, 2, 13, 5), line(pen, 7, 15, 10, 18, 13, 15), line(pen, 5, 7, 2, 10, 5, 13),
                line(pen, 15, 7, 18, 10, 15, 13)));
        new ToolItem(bar, SWT.SEPARATOR);
        tool(pane, DrawingCommand.CONNECT, List.of(new Mark.Disc(new Point(4, 15), 2.5, null, pen), line(pen, 6.5, 15, 10, 15),
                line(pen, 10, 15, 10, 5), line(pen, 10, 5, 13.5, 5), new Mark.Disc(new Point(16, 5), 2.5, null, pen)));
        places = tool(pane, DrawingCommand.PLACES, List.of(new Mark.Disc(new Point(10, 10), 5.5, null, pen),
                line(pen, 10, 1.5, 10, 6), line(pen, 10, 14, 10, 18.5), line(pen, 1.5, 10, 6, 10), line(pen, 14, 10, 18.5, 10)));
        runs = tool(pane, DrawingCommand.RUNS, List.of(line(pen, 2, 6, 14, 6, 14, 18), line(pen, 2, 11, 9, 11, 9, 18)));
        parts = item(pane, SWT.CHECK, DrawingCommand.PALETTE, List.of(
                new Mark.Area(points(3, 3, 17, 3, 17, 17, 3, 17), null, pen), line(pen, 10, 6, 10, 14), line(pen, 6, 10, 14, 10)));
        parts.setSelection(true);
        new ToolItem(bar, SWT.SEPARATOR);
        List<Mark> lens = List.of(new Mark.Disc(new Point(8, 8), 5.5, null, pen), line(pen, 12, 12, 17, 17),
                line(pen, 5.5, 8, 10.5, 8));
        push("tool.larger", () -> zoom(pane.canvas(), STEP), with(lens, line(pen, 8, 5.5, 8, 10.5)));
        push("tool.smaller", () -> zoom(pane.canvas(), 1 / STEP), lens);
    }

    /** Shows which tool is in use: tools that are done go back to selecting by themselves. */
    void shown(Tool tool) {
        if (tool instanceof SelectTool && select != null && !select.getSelection()) {
            chosen(DrawingCommand.SELECT);
        }
    }

    /** Shows what can be used on a drawing. */
    void shown(DrawingKind kind) {
        boolean plan = kind == DrawingKind.PLAN || kind == DrawingKind.SIDE;
        places.setEnabled(plan);
        runs.setEnabled(plan);
    }

    /** Shows whether the parts are shown. */
    void palette(boolean visible) {
        parts.setSelection(visible);
    }

    /** Shows that a command's tool was taken up. */
    void chosen(DrawingCommand command) {
        for (ToolItem item : bar.getItems()) {
            if (command.tool() && (item.getStyle() & SWT.RADIO) != 0) {
                item.setSelection(item.getData() == command);
            }
        }
    }

    private static void zoom(SceneCanvas canvas, double factor) {
        canvas.seen(canvas.viewport().at(canvas.viewport().scale() * factor));
    }

    private ToolItem tool(DrawingPane pane, DrawingCommand command, List<Mark> icon) {
        ToolItem item = item(pane, SWT.RADIO, command, icon);
        item.setSelection(command == DrawingCommand.SELECT);
        return item;
    }

    private ToolItem item(DrawingPane pane, int style, DrawingCommand command, List<Mark> icon) {
        ToolItem item = new ToolItem(bar, style);
        item.setData(command);
        dress(item, "tool." + command.slug(), icon);
        item.addListener(SWT.Selection, event -> {
            if (style != SWT.RADIO || item.getSelection()) {
                command.on(pane);
            }
        });
        return item;
    }

    private void push(String key, Runnable action, List<Mark> icon) {
        ToolItem item = new ToolItem(bar, SWT.PUSH);
        dress(item, key, icon);
        item.addListener(SWT.Selection, event -> action.run());
    }

    private void dress(ToolItem item, String key, List<Mark> icon) {
        item.setToolTipText(Words.of(key));
        item.addListener(SWT.Dispose, event -> item.getImage().dispose());
        icons.put(item, icon);
        item.setImage(MarkImage.of(getDisplay(), theme, icon, ICON_PX));
    }

    /** Takes other colours. */
    void theme(Theme colours) {
        theme = colours;
        icons.forEach((item, icon) -> {
            Image before = item.getImage();
            item.setImage(MarkImage.of(getDisplay(), theme, icon, ICON_PX));
            before.dispose();
        });
    }

    private static List<Mark> with(List<Mark> marks, Mark more) {
        List<Mark> all = new java.util.ArrayList<>(marks);
        all.add(more);
        return all;
    }

    private static Mark line(Stroke pen, double... xy) {
        return new Mark.Line(points(xy), pen);
    }

    private static List<Point> points(double... xy) {
        List<Point> points = new java.util.ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return points;
    }
}
