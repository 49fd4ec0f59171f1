// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.services.CaseView;

/**
 * The returns at one earth point, as a block of text.
 *
 * @param stud    the earth point, or case
 * @param amps    current that its entries bring, without the straps' there, A; NaN without figures
 * @param head    what stands in bold at its stub
 * @param before  its current before a strap was lost; empty when there is none to be shown
 * @param lines   one an entry, the largest current first
 * @param widthPx room it takes
 */
record EarthBlock(EarthContent.Stud stud, double amps, String head, String before, List<Line> lines, double widthPx) {
    static final double LINE_PX = 16;
    static final double STUB_PX = 34;
    private static final int MOST = 9;
    private static final double LEAST_PX = 70;

    /** One line; figure may be empty. */
    record Line(String id, String shown, String label, String figure, boolean idle) {
        String words() {
            return label == null || label.isBlank() ? shown : shown + "  " + label;
        }
    }

    EarthBlock {
        lines = List.copyOf(lines);
    }

    static EarthBlock of(EarthContent.Stud stud, EarthState state, TextMeasure type) {
        CaseView figures = state.now();
        List<EarthContent.Entry> entries = new ArrayList<>(stud.entries());
        if (figures != null) {
            entries.sort(Comparator.comparingDouble(entry -> -StrictMath.abs(amps(entry, figures))));
        }
        double total = figures == null ? Double.NaN : entries.stream().mapToDouble(entry -> amps(entry, figures)).sum();
        List<Line> lines = new ArrayList<>();
        boolean mixed = figures != null && entries.stream().anyMatch(entry -> amps(entry, figures) > 5e-4)
                && entries.stream().anyMatch(entry -> amps(entry, figures) < -5e-4);
        for (EarthContent.Entry entry : entries) {
            double amps = figures == null ? Double.NaN : amps(entry, figures);
            boolean idle = figures != null && StrictMath.abs(amps) < 5e-4;
            String way = !mixed || idle ? "" : amps > 0 ? "in " : "out ";
            lines.add(new Line(entry.id(), entry.shown(), entry.label(),
                    figures == null || idle ? "" : way + EarthText.amps(amps), idle));
        }
        if (lines.size() > MOST) {
            int more = lines.size() - MOST + 1;
            List<Line> shown = new ArrayList<>(lines.subList(0, MOST - 1));
            shown.add(new Line(stud.id(), "and " + more + " more", null, "", true));
            lines = shown;
        }
        String head = figures == null ? stud.label() == null ? "" : stud.label()
                : EarthText.amps(total) + (stud.label() == null ? "" : "  " + stud.label());
        String before = state.before() == null ? null
                : EarthText.amps(stud.entries().stream().mapToDouble(entry -> amps(entry, state.before())).sum());
        before = before == null || figures != null && before.equals(EarthText.amps(total)) ? "" : before;
        double width = StrictMath.max(LEAST_PX, 20 + type.widthPx(head, 12, true)
                + (before.isEmpty() ? 0 : 8 + type.widthPx(before, 12, false)));
        for (Line line : lines) {
            width = StrictMath.max(width, type.widthPx(line.words(), 12, false)
                    + (line.figure().isEmpty() ? 0 : 14 + type.widthPx(line.figure(), 12, false)));
        }
        return new EarthBlock(stud, total, head, before, lines, StrictMath.ceil(width));
    }

    private static double amps(EarthContent.Entry entry, CaseView figures) {
        CaseView.Conductor core = figures.conductors().get(entry.core());
        double amps = core != null ? core.amps() : figures.contacts().getOrDefault(entry.core(), 0.0);
        return entry.forward() ? amps : -amps;
    }

    /** The heaviest section of its cables, mm2. */
    double sectionMm2() {
        return stud.entries().stream().mapToDouble(EarthContent.Entry::sectionMm2).filter(value -> !Double.isNaN(value)).max()
                .orElse(1);
    }

    /** Height with its stub, px. */
    double heightPx() {
        return STUB_PX + LINE_PX * lines.size() + 6;
    }
}
