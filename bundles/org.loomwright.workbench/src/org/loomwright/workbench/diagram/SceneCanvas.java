// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.diagram;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.HitIndex;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.Viewport;
import org.loomwright.diagram.tool.Advice;
import org.loomwright.diagram.tool.Feedback;
import org.loomwright.diagram.tool.KeyEvent;
import org.loomwright.diagram.tool.PointerEvent;
import org.loomwright.diagram.tool.SelectTool;
import org.loomwright.diagram.tool.Tool;
import org.loomwright.diagram.tool.ToolContext;
import org.loomwright.diagram.tool.ToolResult;
import org.loomwright.diagram.tool.Verdict;

/**
 * Shows a scene. What stands still is painted once into an image; pointing, selecting and dragging only paint over it. Tools
 * decide what the pointer means; what they ask for goes to the {@link Host}.
 */
public final class SceneCanvas extends Canvas {
    private static final double LARGEST_FIT = 2;
    /** Quiet after the last shift or zoom before the drawing is painted anew; till then its image is shifted, ms. */
    private static final int QUIET_MS = 60;

    /** Whoever owns what is drawn. */
    public interface Host {
        /** The person selects elements. */
        void select(Set<String> ids);

        /** The person asks for a change of the model. */
        void edit(org.loomwright.diagram.tool.EditRequest request);

        /** The pointer rests on an element, or on none (null). */
        void hover(String id, Point at);

        /** The model says something else to the gesture as it stands; null for nothing. */
        default void verdict(Verdict verdict) {
        }

        /** Another tool is in use, or the same in another state. */
        default void tool(Tool tool) {
        }
    }

    private final Typeface typeface;
    private final Host host;
    private final CanvasAccess access;
    private Advice advice = Advice.moving(id -> false);
    private double gridPx;
    private Theme theme = Theme.light();
    private Scene scene = new Scene("", 1, 1, List.of());
    private HitIndex hits;
    private Viewport viewport = Viewport.of(1, 1);
    private Tool tool = new SelectTool();
    private Feedback feedback = Feedback.NONE;
    private Set<String> selection = Set.of();
    private List<String> found = List.of();
    private Image still;
    private Viewport stillSeen;
    private int stillDue;
    private boolean fitted = true;

    /** An empty canvas. */
    public SceneCanvas(Composite parent, Host host) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        this.host = host;
        typeface = Typeface.of(getDisplay());
        hits = HitIndex.of(scene, typeface.type());
        access = new CanvasAccess(this);
        addPaintListener(this::paint);
        addListener(SWT.Resize, event -> resized());
        addListener(SWT.Dispose, event -> dropStill());
        new CanvasEvents(this);
    }

    /** Shows a scene; the part that is seen stays, or the whole is fitted as long as nobody zoomed. */
    public void show(Scene next) {
        boolean first = scene.groups().isEmpty();
        scene = next;
        hits = HitIndex.of(next, typeface.type());
        feedback = Feedback.NONE;
        if (first || fitted) {
            fit();
        }
        damaged();
    }

    /** What is shown. */
    public Scene scene() {
        return scene;
    }

    /** What lies where. */
    public HitIndex hits() {
        return hits;
    }

    /** What the model says to gestures, and the grid they snap to, px of the sheet; 0 for none. */
    public void advice(Advice next, double grid) {
        advice = next;
        gridPx = grid;
        redraw();
    }

    /** Colours. */
    public void theme(Theme colours) {
        if (!theme.name().equals(colours.name())) {
            theme = colours;
            damaged();
        }
    }

    /** Colours in use. */
    public Theme theme() {
        return theme;
    }

    /** Marks elements as selected; for one that is not drawn what it belongs to. */
    public void selection(Set<String> ids) {
        Set<String> drawn = new LinkedHashSet<>();
        ids.forEach(id -> drawn.add(drawn(id)));
        drawn.remove(null);
        if (!drawn.equals(selection)) {
            selection = Collections.unmodifiableSet(drawn);
            access.selected(selection);
            redraw();
        }
    }

    /** The element itself, or the nearest that is drawn of those it lies in; null for none. */
    public String drawn(String id) {
        String at = id;
        while (at != null && hits.bounds(at) == null) {
            int cut = StrictMath.max(at.lastIndexOf('/'), StrictMath.max(at.lastIndexOf('.'), at.lastIndexOf('#')));
            at = cut <= 0 ? null : at.substring(0, cut);
        }
        return at;
    }

    /** What is marked as selected. */
    public Set<String> selection() {
        return selection;
    }

    /** Marks what a search found; the first is brought into sight. */
    public void found(List<String> ids) {
        found = List.copyOf(ids);
        if (!ids.isEmpty()) {
            bringIntoSight(Set.of(ids.get(0)));
        }
        redraw();
    }

    /** The whole sheet. */
    public void fit() {
        fitted = true;
        Bounds whole = new Bounds(0, 0, scene.widthPx(), scene.heightPx());
        viewport = viewport.fitting(whole, LARGEST_FIT);
        damaged();
    }

    /** What is selected, as large as the window allows. */
    public void fitSelection() {
        Bounds room = hits.bounds(selection);
        if (room != null) {
            seen(viewport.fitting(room.grown(40), LARGEST_FIT));
        }
    }

    /** Pans no more than needed. */
    public void bringIntoSight(Set<String> ids) {
        Bounds room = hits.bounds(ids);
        if (room != null && !viewport.seen().holds(room)) {
            seen(viewport.showing(room));
        }
    }

    /** The part that is seen. */
    public Viewport viewport() {
        return viewport;
    }

    /** Shows another part. */
    public void seen(Viewport next) {
        fitted = false;
        viewport = next;
        redraw();
        int mine = ++stillDue;
        getDisplay().timerExec(QUIET_MS, () -> {
            if (mine == stillDue && !isDisposed()) {
                damaged();
            }
        });
    }

    /** Takes up a tool. */
    public void tool(Tool next) {
        apply(tool.captureLost());
        tool = next;
        setCursor(CanvasEvents.cursor(getDisplay(), tool.cursor()));
        host.tool(tool);
        redraw();
    }

    /** Does what a key means to the tool in use. */
    public void key(KeyEvent event) {
        apply(tool.key(event, context()));
    }

    /** Does what the pointer means to the tool in use; px of the window. */
    public void pointer(PointerEvent event) {
        apply(tool.pointer(event, context()));
    }

    /** The element pointed at, or the one a gesture is aimed at; null for none. */
    public String aim() {
        return feedback.hover();
    }

    /** What the model says to the gesture as it stands; null for nothing. */
    public Verdict verdict() {
        return feedback.verdict();
    }

    /** The tool in use. */
    public Tool tool() {
        return tool;
    }

    /** What a tool may look at. */
    public ToolContext context() {
        return new ToolContext(hits, viewport, selection, advice, gridPx);
    }

    /** Does what a tool asked for. */
    void apply(ToolResult result) {
        Feedback before = feedback;
        boolean other = !tool.equals(result.next());
        tool = result.next();
        // what was moved stays where it was put until it is drawn there
        if (result.edit() == null && !result.feedback().equals(feedback)) {
            feedback = result.feedback();
            redraw();
        }
        if (other) {
            host.tool(tool);
        }
        if (result.viewport() != null) {
            seen(result.viewport());
        }
        if (result.selection() != null) {
            host.select(result.selection());
        }
        if (result.edit() != null) {
            host.edit(result.edit());
        }
        if (!isDisposed()) {
            setCursor(CanvasEvents.cursor(getDisplay(), tool.cursor()));
            if (!Objects.equals(before.hover(), feedback.hover())) {
                host.hover(feedback.hover(), null);
            }
            if (!Objects.equals(before.verdict(), feedback.verdict())) {
                access.told(feedback.verdict());
                host.verdict(feedback.verdict());
            }
        }
    }

    /** Tells the host that the pointer rests. */
    void resting(Point at) {
        if (feedback.hover() != null) {
            host.hover(feedback.hover(), at);
        }
    }

    private void resized() {
        Rectangle area = getClientArea();
        viewport = viewport.resized(Math.max(1, area.width), Math.max(1, area.height));
        if (fitted) {
            fit();
        }
        damaged();
    }

    private void damaged() {
        dropStill();
        redraw();
    }

    private void dropStill() {
        if (still != null) {
            still.dispose();
            still = null;
        }
    }

    private void paint(PaintEvent event) {
        Rectangle area = getClientArea();
        if (area.width <= 0 || area.height <= 0) {
            return;
        }
        if (still == null) {
            paintStill(area);
            stillSeen = viewport;
        }
        drawStill(event.gc, area);
        try (SwtPainter painter = new SwtPainter(event.gc, theme, typeface, viewport)) {
            painter.paint(SelectionMarks.selected(hits, selection), 0, 0);
            painter.paint(SelectionMarks.hovered(hits, feedback.hover()), 0, 0);
            List<Group> ghosts = feedback.ghosts();
            painter.paint(ghosts, feedback.dxPx(), feedback.dyPx());
            painter.paint(SelectionMarks.marquee(feedback.marquee(), viewport.scale()), 0, 0);
        }
        List<Group> over = new ArrayList<>(tool.resting(context()));
        over.addAll(feedback.overlay());
        if (!over.isEmpty()) {
            try (SwtPainter painter = new SwtPainter(event.gc, theme, typeface, Viewport.of(area.width, area.height))) {
                painter.paint(over, 0, 0);
            }
        }
    }

    /** The image as it is, or shifted and stretched to where its parts are now. */
    private void drawStill(GC gc, Rectangle area) {
        int paper = theme.colour(Role.PAPER);
        gc.setBackground(new Color(paper >> 16 & 0xFF, paper >> 8 & 0xFF, paper & 0xFF));
        gc.fillRectangle(area);
        Point corner = viewport.toScreen(stillSeen.toSheet(new Point(0, 0)));
        double stretch = viewport.scale() / stillSeen.scale();
        Rectangle pixels = still.getBounds();
        gc.drawImage(still, 0, 0, pixels.width, pixels.height, (int) StrictMath.rint(corner.x()),
                (int) StrictMath.rint(corner.y()), (int) StrictMath.rint(stillSeen.widthPx() * stretch),
                (int) StrictMath.rint(stillSeen.heightPx() * stretch));
    }

    /** Painted with as many pixels as the monitor has, once: images that paint themselves do so anew in every frame. */
    private void paintStill(Rectangle area) {
        double zoom = getMonitor().getZoom() / 100.0;
        still = new Image(getDisplay(), (int) StrictMath.ceil(area.width * zoom), (int) StrictMath.ceil(area.height * zoom));
        GC gc = new GC(still);
        Viewport fine = new Viewport(viewport.scale() * zoom, viewport.x() * zoom, viewport.y() * zoom, area.width * zoom,
                area.height * zoom);
        try (SwtPainter painter = new SwtPainter(gc, theme, typeface, fine)) {
            painter.paint(scene);
            painter.paint(SelectionMarks.found(hits, found), 0, 0);
        } finally {
            gc.dispose();
        }
    }
}
