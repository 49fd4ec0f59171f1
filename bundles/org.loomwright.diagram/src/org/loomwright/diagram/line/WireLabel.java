// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.symbol.Badge;
import org.loomwright.diagram.symbol.Swatch;
import org.loomwright.model.vehicle.Cable;

/** What stands at a cable: above its line designation, swatch, section and length, below it current, drop and temperature. */
final class WireLabel {
    private static final double PAD_PX = 8;
    private static final double LINE_PX = 15;
    private static final double BADGE_PX = 22;
    /** Room is kept for such figures, so that nothing moves from case to case. */
    private static final String NARROW_FIGURES = "88.8 A  888 mV";
    private static final String WIDE_FIGURES = NARROW_FIGURES + "  88 \u00b0C";
    private final Drafting drafting;
    private final Wire wire;
    private final boolean wide;
    private final boolean brief;
    private final List<String> colours;

    /** @param wide section and length beside the designation instead of below it */
    WireLabel(Drafting drafting, Wire wire, boolean wide) {
        this(drafting, wire, wide, false);
    }

    private WireLabel(Drafting drafting, Wire wire, boolean wide, boolean brief) {
        this.drafting = drafting;
        this.wire = wire;
        this.wide = wide;
        this.brief = brief;
        colours = brief ? List.of() : colours(wire.cable());
    }

    /** The designation only, for the second piece of a line that is drawn in two. */
    WireLabel brief() {
        return new WireLabel(drafting, wire, true, true);
    }

    double width() {
        double head = LineText.width(drafting.measure(), wire.designation(), true)
                + (colours.isEmpty() ? 0 : 6 + Swatch.WIDTH_PX + 5 + LineText.width(drafting.measure(), letters(), false))
                + (drafting.figures().studied() && !brief ? BADGE_PX : 0);
        double more = LineText.width(drafting.measure(), size(), false);
        double top = wide && more > 0 ? head + 8 + more : StrictMath.max(head, more);
        double below = 0;
        for (String line : figures()) {
            below = StrictMath.max(below, LineText.width(drafting.measure(), line, false));
        }
        if (drafting.figures().live() && !brief) {
            below = StrictMath.max(below, LineText.width(drafting.measure(), wide ? WIDE_FIGURES : NARROW_FIGURES, false));
        }
        return StrictMath.ceil(StrictMath.max(top, below) + 2 * PAD_PX);
    }

    /** Room above and below the line, px. */
    double height() {
        return 2 * (0.5 + (wide || size().isEmpty() ? LINE_PX : 2 * LINE_PX));
    }

    /** The label of a line through y, its room beginning at x. */
    List<Group> groups(double x, double y) {
        Role tone = drafting.tone(wire);
        Role soft = tone == Role.INK ? Role.INK2 : tone;
        double left = x + PAD_PX;
        double base = y - 7 - (wide || size().isEmpty() ? 0 : LINE_PX);
        List<Mark> marks = new ArrayList<>();
        marks.add(LineText.start(left, base, wire.designation(), true, tone));
        double at = left + LineText.width(drafting.measure(), wire.designation(), true);
        if (!colours.isEmpty()) {
            at += 6;
            marks.addAll(Swatch.marks(colours, at, base - 4.5));
            at += Swatch.WIDTH_PX + 5;
            marks.add(LineText.start(at, base, letters(), false, soft));
            at += LineText.width(drafting.measure(), letters(), false);
        }
        List<Group> groups = new ArrayList<>();
        if (badge() != null) {
            groups.add(new Group(wire.cableId(), null, Group.Kind.BADGE, badge().marks(at + 13, base - 4, 14)));
            at += BADGE_PX;
        }
        if (!size().isEmpty()) {
            marks.add(wide ? LineText.start(at + 8, base, size(), false, soft)
                    : LineText.start(left, y - 7, size(), false, soft));
        }
        double under = y + 17;
        for (String line : figures()) {
            marks.add(LineText.start(left, under, line, false, tone));
            under += LINE_PX;
        }
        groups.add(0, new Group(wire.cableId(), null, Group.Kind.LABEL, marks));
        return groups;
    }

    private Badge badge() {
        return brief ? null : drafting.figures().badge(wire.cableId());
    }

    private String letters() {
        return String.join("/", colours);
    }

    private String size() {
        if (brief) {
            return "";
        }
        String section = drafting.measures().section(wire.sectionMm2());
        OptionalDouble length = drafting.figures().lengthMm(wire.cableId());
        if (length.isEmpty() && wire.cable().getLengthMm() != null) {
            length = OptionalDouble.of(wire.cable().getLengthMm().doubleValue());
        }
        String far = length.isEmpty() || Double.isNaN(length.getAsDouble()) ? ""
                : drafting.measures().length(length.getAsDouble());
        return section + (section.isEmpty() || far.isEmpty() ? "" : " \u00b7 ") + far;
    }

    /** Figures below the line: in one line, or the temperature below the others. */
    private List<String> figures() {
        OptionalDouble amps = drafting.figures().cableA(wire.cableId());
        if (brief || amps.isEmpty() || amps.getAsDouble() <= Drafting.NOTHING_A) {
            return List.of();
        }
        OptionalDouble drop = drafting.figures().cableMillivolts(wire.cableId());
        OptionalDouble hot = drafting.figures().cableC(wire.cableId());
        String flow = LineText.figure(amps.getAsDouble()) + " A"
                + (drop.isEmpty() ? "" : "  " + LineText.figure(drop.getAsDouble()) + " mV");
        if (hot.isEmpty()) {
            return List.of(flow);
        }
        String warm = drafting.measures().temperature(hot.getAsDouble());
        return wide ? List.of(flow + "  " + warm) : List.of(flow, warm);
    }

    /** Colour letters of the cores, the first two that differ; a colour with a stripe as its two colours. */
    private static List<String> colours(Cable cable) {
        List<String> all = cable.getCores().stream().map(core -> core.getColour()).filter(code -> code != null && !code.isBlank())
                .distinct().collect(Collectors.toList());
        if (all.size() == 1 && all.get(0).length() == 4) {
            return List.of(all.get(0).substring(0, 2), all.get(0).substring(2));
        }
        return all.stream().map(code -> code.length() > 2 ? code.substring(0, 2) : code).distinct().limit(2).toList();
    }
}
