// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import java.util.Locale;
import java.util.function.Consumer;
import org.loomwright.diagram.tool.Alignment;
import org.loomwright.diagram.tool.ConnectTool;
import org.loomwright.diagram.tool.KeyEvent;
import org.loomwright.diagram.tool.MarqueeTool;
import org.loomwright.diagram.tool.NewPlaceTool;
import org.loomwright.diagram.tool.PanTool;
import org.loomwright.diagram.tool.RunTool;
import org.loomwright.diagram.tool.SelectTool;
import org.loomwright.workbench.editor.DrawingPane;

/** What can be done on a drawing by a command, whatever started it: a key, a menu, a button. */
public enum DrawingCommand {
    /** Takes up selecting. */
    SELECT(pane -> pane.canvas().tool(new SelectTool())),
    /** Takes up selecting by a rectangle. */
    MARQUEE(pane -> pane.canvas().tool(MarqueeTool.chosen())),
    /** Takes up shifting the sheet. */
    PAN(pane -> pane.canvas().tool(PanTool.chosen())),
    /** Takes up making places. */
    PLACES(pane -> pane.canvas().tool(NewPlaceTool.chosen())),
    /** Takes up drawing runs from place to place. */
    RUNS(pane -> pane.canvas().tool(RunTool.chosen())),
    /** Connects from what is selected, or takes up connecting. */
    CONNECT(pane -> {
        if (pane.canvas().selection().size() == 1) {
            pane.canvas().key(KeyEvent.of(KeyEvent.Key.CONNECT));
        } else {
            pane.canvas().tool(ConnectTool.chosen());
        }
    }),
    /** Bends what is selected. */
    BEND(pane -> pane.canvas().key(KeyEvent.of(KeyEvent.Key.BEND))),
    /** Puts a copy beside. */
    DUPLICATE(pane -> pane.canvas().key(KeyEvent.of(KeyEvent.Key.DUPLICATE))),
    /** Shows the parts that can be placed, or hides them. */
    PALETTE(DrawingPane::togglePalette),
    /** Goes to the parts that can be placed. */
    PARTS(DrawingPane::seekPart),
    /** Lines up left sides. */
    ALIGN_LEFT(pane -> pane.gestures().align(Alignment.LEFT)),
    /** Lines up centres from left to right. */
    ALIGN_CENTRE(pane -> pane.gestures().align(Alignment.CENTRE)),
    /** Lines up right sides. */
    ALIGN_RIGHT(pane -> pane.gestures().align(Alignment.RIGHT)),
    /** Lines up upper sides. */
    ALIGN_TOP(pane -> pane.gestures().align(Alignment.TOP)),
    /** Lines up middles from top to bottom. */
    ALIGN_MIDDLE(pane -> pane.gestures().align(Alignment.MIDDLE)),
    /** Lines up lower sides. */
    ALIGN_BOTTOM(pane -> pane.gestures().align(Alignment.BOTTOM)),
    /** Spreads evenly from left to right. */
    ALIGN_ACROSS(pane -> pane.gestures().align(Alignment.ACROSS)),
    /** Spreads evenly from top to bottom. */
    ALIGN_DOWN(pane -> pane.gestures().align(Alignment.DOWN)),
    /** Lets positions snap to the grid, or not. */
    GRID(pane -> pane.gestures().snapping(!pane.gestures().snapping()));

    private final Consumer<DrawingPane> action;

    DrawingCommand(Consumer<DrawingPane> action) {
        this.action = action;
    }

    /** Does it on a drawing, which has the keyboard then, unless the command gives it to something else. */
    public void on(DrawingPane pane) {
        pane.canvas().setFocus();
        pane.chosen(this);
        action.accept(pane);
    }

    /** True for what takes up a tool that then stays. */
    public boolean tool() {
        return switch (this) {
            case SELECT, MARQUEE, PAN, PLACES, RUNS, CONNECT -> true;
            default -> false;
        };
    }

    /** How it is written in the registry and in keys of texts. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The command that is written so in the platform's registry. */
    public static DrawingCommand of(String slug) {
        return valueOf(slug.toUpperCase(Locale.ROOT));
    }
}
