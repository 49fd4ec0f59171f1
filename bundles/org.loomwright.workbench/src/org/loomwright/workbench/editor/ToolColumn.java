// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.tool.MarqueeTool;
import org.loomwright.diagram.tool.PanTool;
import org.loomwright.diagram.tool.SelectTool;
import org.loomwright.diagram.tool.Tool;
import org.loomwright.workbench.diagram.MarkImage;
import org.loomwright.workbench.diagram.SceneCanvas;

/** The tools at the left edge of a drawing. */
final class ToolColumn extends Composite {
    private static final int ICON_PX = 20;
    private static final double STEP = 1.25;
    private final ToolBar bar;

    ToolColumn(Composite parent) {
        super(parent, SWT.NONE);
        setLayout(new FillLayout());
        bar = new ToolBar(this, SWT.VERTICAL | SWT.FLAT);
    }

    /** Acts on a canvas. */
    void on(SceneCanvas canvas) {
        Stroke pen = Stroke.solid(Role.INK2, 1.5);
        tool(canvas, "tool.select", new SelectTool(), true, List.of(new Mark.Area(points(5, 3, 15, 12, 10, 12.5, 7.5, 17),
                Fill.solid(Role.PLATE), pen)));
        tool(canvas, "tool.marquee", MarqueeTool.chosen(), false, List.of(new Mark.Area(points(3, 5, 17, 5, 17, 15, 3, 15), null,
                Stroke.dashed(Role.INK2, 1.5, 3.0, 2.0))));
        tool(canvas, "tool.pan", PanTool.chosen(), false, List.of(line(pen, 10, 2, 10, 18), line(pen, 2, 10, 18, 10),
                line(pen, 7, 5, 10, 2, 13, 5), line(pen, 7, 15, 10, 18, 13, 15), line(pen, 5, 7, 2, 10, 5, 13),
                line(pen, 15, 7, 18, 10, 15, 13)));
        new ToolItem(bar, SWT.SEPARATOR);
        List<Mark> lens = List.of(new Mark.Disc(new Point(8, 8), 5.5, null, pen), line(pen, 12, 12, 17, 17),
                line(pen, 5.5, 8, 10.5, 8));
        push("tool.larger", () -> zoom(canvas, STEP), with(lens, line(pen, 8, 5.5, 8, 10.5)));
        push("tool.smaller", () -> zoom(canvas, 1 / STEP), lens);
    }

    private static void zoom(SceneCanvas canvas, double factor) {
        canvas.seen(canvas.viewport().at(canvas.viewport().scale() * factor));
    }

    private void tool(SceneCanvas canvas, String key, Tool tool, boolean chosen, List<Mark> icon) {
        ToolItem item = new ToolItem(bar, SWT.RADIO);
        item.setSelection(chosen);
        dress(item, key, icon);
        item.addListener(SWT.Selection, event -> {
            if (item.getSelection()) {
                canvas.tool(tool);
                canvas.setFocus();
            }
        });
    }

    private void push(String key, Runnable action, List<Mark> icon) {
        ToolItem item = new ToolItem(bar, SWT.PUSH);
        dress(item, key, icon);
        item.addListener(SWT.Selection, event -> action.run());
    }

    private void dress(ToolItem item, String key, List<Mark> icon) {
        item.setToolTipText(Words.of(key));
        Image image = MarkImage.of(getDisplay(), icon, ICON_PX);
        item.setImage(image);
        item.addListener(SWT.Dispose, event -> image.dispose());
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
