// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Viewport;
import org.loomwright.diagram.symbol.Badge;
import org.loomwright.workbench.diagram.SwtPainter;
import org.loomwright.workbench.diagram.Typeface;

/** One operating state in the strip above a drawing: its name, what was found in it, whether it is looked at. */
final class CasePill extends Canvas {
    private static final int HIGH_PX = 24;
    private static final double TEXT_PX = 12;
    private static final double SIDE_PX = 9;
    private static final double BADGE_PX = 14;
    private static final double FIGURE_PX = 12;

    private final String caseName;
    private final Runnable choose;
    private String words;
    private Theme theme = Theme.light();
    private FindingCount count = new FindingCount(0, 0, 0, 0);
    private boolean chosen;

    /** A pill; the case is null for all cases together. */
    CasePill(Composite parent, String caseName, String words, Runnable choose) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.caseName = caseName;
        this.words = words;
        this.choose = choose;
        addPaintListener(this::paint);
        addListener(SWT.MouseDown, event -> {
            setFocus();
            choose.run();
        });
        addListener(SWT.KeyDown, event -> {
            if (event.character == ' ' || event.character == SWT.CR) {
                choose.run();
            }
        });
        addListener(SWT.Traverse, event -> event.doit = true);
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = Words.of("strip.pill", words, count.errors(), count.warnings());
            }
        });
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_RADIOBUTTON;
            }

            @Override
            public void getState(AccessibleControlEvent event) {
                event.detail = ACC.STATE_FOCUSABLE | (chosen ? ACC.STATE_CHECKED : ACC.STATE_NORMAL);
            }
        });
    }

    String caseName() {
        return caseName;
    }

    String words() {
        return words;
    }

    void words(String other) {
        words = other;
        redraw();
    }

    FindingCount count() {
        return count;
    }

    boolean chosen() {
        return chosen;
    }

    Theme theme() {
        return theme;
    }

    /** Does what a click on it does. */
    void choose() {
        choose.run();
    }

    /** Width with two badges of two figures, px. */
    int widestPx() {
        double text = Typeface.of(getDisplay()).type().widthPx(words, TEXT_PX, true);
        return (int) StrictMath.ceil(2 * SIDE_PX + text + 2 * (2 * BADGE_PX + FIGURE_PX));
    }

    /** Shows what is so now; true when its width changed. */
    boolean show(FindingCount found, boolean isChosen, Theme colours) {
        boolean wider = found.errors() != count.errors() || found.warnings() != count.warnings() || isChosen != chosen;
        count = found;
        chosen = isChosen;
        theme = colours;
        redraw();
        return wider;
    }

    @Override
    public Point computeSize(int wide, int high, boolean changed) {
        return new Point((int) StrictMath.ceil(content().widthPx()), HIGH_PX);
    }

    private Scene content() {
        Typeface face = Typeface.of(getDisplay());
        List<Mark> marks = new ArrayList<>();
        double base = HIGH_PX / 2.0 + TEXT_PX * 0.36;
        double x = SIDE_PX;
        marks.add(new Mark.Text(new org.loomwright.diagram.scene.Point(x, base), words, TEXT_PX, chosen, Mark.Anchor.START,
                Role.INK));
        x += face.type().widthPx(words, TEXT_PX, chosen);
        x = badge(Badge.ERROR, count.errors(), x, marks, face);
        x = badge(Badge.WARNING, count.warnings(), x, marks, face);
        double width = StrictMath.ceil(x + SIDE_PX);
        SceneBuilder scene = new SceneBuilder(words, width, HIGH_PX);
        scene.area(Fill.solid(chosen ? Role.WASH : Role.PLATE), Stroke.solid(chosen || isFocusControl() ? Role.SELECT : Role.HAIR,
                chosen ? 2 : 1), pill(width));
        return scene.add(new Group(null, words, Group.Kind.NODE, marks)).build();
    }

    private double badge(Badge badge, int number, double x, List<Mark> marks, Typeface face) {
        if (number == 0) {
            return x;
        }
        String text = Integer.toString(number);
        double centre = x + 6 + BADGE_PX / 2;
        marks.addAll(badge.marks(centre, HIGH_PX / 2.0, BADGE_PX));
        double at = centre + BADGE_PX / 2 + 3;
        double base = HIGH_PX / 2.0 + FIGURE_PX * 0.36;
        marks.add(new Mark.Text(new org.loomwright.diagram.scene.Point(at, base), text, FIGURE_PX, false, Mark.Anchor.START,
                Role.INK));
        return at + face.type().widthPx(text, FIGURE_PX, false);
    }

    private static List<org.loomwright.diagram.scene.Point> pill(double width) {
        List<org.loomwright.diagram.scene.Point> points = new ArrayList<>();
        double radius = HIGH_PX / 2.0 - 1;
        for (int step = 0; step <= 24; step++) {
            double angle = StrictMath.PI * (step - 6) / 12 + (step > 12 ? -StrictMath.PI / 12 : 0);
            double middle = step <= 12 ? width - 1 - radius : 1 + radius;
            points.add(new org.loomwright.diagram.scene.Point(middle + radius * StrictMath.cos(angle),
                    HIGH_PX / 2.0 + radius * StrictMath.sin(angle)));
        }
        return points;
    }

    private void paint(PaintEvent event) {
        int rgb = theme.colour(Role.PANEL);
        event.gc.setBackground(new org.eclipse.swt.graphics.Color(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF));
        event.gc.fillRectangle(getClientArea());
        Scene scene = content();
        try (SwtPainter painter = new SwtPainter(event.gc, theme, Typeface.of(getDisplay()),
                Viewport.of(scene.widthPx(), scene.heightPx()))) {
            painter.paint(scene.groups(), 0, 0);
        }
    }
}
