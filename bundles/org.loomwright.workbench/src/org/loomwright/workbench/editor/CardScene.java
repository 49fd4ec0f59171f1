// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.symbol.Badge;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;

/** The card beside an element that is pointed at: what it is, its figures, what was found, why, and what would mend it. */
final class CardScene {
    private static final double WIDE_PX = 440;
    private static final double SIDE_PX = 16;
    private static final double TEXT_PX = 12;
    private static final double LEAD_PX = 17;
    private static final double BADGE_PX = 16;
    private static final int FINDINGS = 3;

    private final TextMeasure type;
    private final List<Group> groups = new ArrayList<>();
    private final List<Mark> rules = new ArrayList<>();
    private String link;
    private double y = SIDE_PX;
    private double wide;

    private CardScene(TextMeasure type) {
        this.type = type;
    }

    /**
     * A card.
     *
     * @param designation what the element is called
     * @param words       what it is; may be empty
     * @param figures     figures of the case looked at
     * @param findings    findings, the worst first
     * @param names       how elements are shown
     */
    static Scene of(String designation, String words, List<Line> figures, List<Finding> findings, Designations names,
            TextMeasure type) {
        CardScene card = new CardScene(type);
        card.line(designation, 14, true, Role.INK, 0, 20);
        if (!words.isBlank()) {
            card.wrapped(words, Role.INK2, 0);
        }
        figures.forEach(figure -> card.figures(figure));
        findings.stream().limit(FINDINGS).forEach(finding -> card.finding(finding, names));
        if (findings.size() > FINDINGS) {
            card.y += 6;
            card.wrapped(Words.of("card.more", findings.size() - FINDINGS), Role.INK2, 0);
        }
        return card.scene(designation);
    }

    /**
     * Figures beside one another.
     *
     * @param texts figures as shown
     * @param links what each leads to, see {@link CardLink}; null for none
     */
    record Line(List<String> texts, List<String> links) {
    }

    private void figures(Line figures) {
        double x = 0;
        for (int i = 0; i < figures.texts().size(); i++) {
            String text = figures.texts().get(i) + (i + 1 < figures.texts().size() ? "," : "");
            double width = type.widthPx(text, TEXT_PX, false);
            if (x > 0 && x + width > WIDE_PX) {
                x = 0;
                y += LEAD_PX;
            }
            link = figures.links().get(i);
            line(text, TEXT_PX, false, Role.INK, x, 0);
            link = null;
            x += width + type.widthPx(" ", TEXT_PX, false);
        }
        y += LEAD_PX;
    }

    private void finding(Finding finding, Designations names) {
        y += 6;
        rules.add(new Mark.Line(List.of(new Point(SIDE_PX, y), new Point(SIDE_PX + WIDE_PX, y)), Stroke.solid(Role.HAIR, 1)));
        y += 8;
        Badge badge = BadgeImages.badge(finding);
        groups.add(new Group(null, null, Group.Kind.BADGE, badge.marks(SIDE_PX + BADGE_PX / 2, y + TEXT_PX * 0.6, BADGE_PX)));
        double indent = BADGE_PX + 8;
        link = CardLink.go(finding.element());
        wrapped(finding.title(), Role.INK, indent, true);
        link = null;
        List<String> context = new ArrayList<>();
        if (finding.is() != null) {
            context.add(finding.is().toString());
        }
        if (finding.wanted() != null) {
            context.add(Words.of("card.wanted", finding.wanted()));
        }
        if (finding.caseName() != null) {
            context.add(Words.of("card.case", finding.caseName()));
        }
        context.add(finding.rule());
        wrapped(String.join(", ", context), Role.INK2, indent);
        if (finding.accepted() != null) {
            wrapped(Words.of("card.accepted", finding.accepted()), Role.INK2, indent);
        }
        part("card.why", finding.why().stream().limit(4).toList(), indent);
        causes(finding, names, indent);
        part("card.mend", finding.mends().stream().limit(FINDINGS).map(Mend::text).toList(), indent);
    }

    /** What lies elsewhere and brings it about; each leads there. */
    private void causes(Finding finding, Designations names, double indent) {
        double top = y;
        List<Cause> elsewhere = finding.causes().stream().filter(cause -> !cause.element().equals(finding.element()))
                .limit(FINDINGS).toList();
        if (!elsewhere.isEmpty()) {
            line(Words.of("card.cause"), TEXT_PX, false, Role.INK2, indent, LEAD_PX);
            y = top;
        }
        for (Cause cause : elsewhere) {
            link = CardLink.go(cause.element());
            wrapped(names.shown(cause.element()) + "  " + cause.what(), Role.SELECT,
                    indent + 44);
            link = null;
        }
    }

    private void part(String head, List<String> lines, double indent) {
        if (lines.isEmpty()) {
            return;
        }
        double column = indent + 44;
        double top = y;
        line(Words.of(head), TEXT_PX, false, Role.INK2, indent, LEAD_PX);
        y = top;
        lines.forEach(text -> wrapped(text, Role.INK, column));
    }

    private void wrapped(String text, Role role, double indent) {
        wrapped(text, role, indent, false);
    }

    private void wrapped(String text, Role role, double indent, boolean bold) {
        StringBuilder row = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            String longer = row.isEmpty() ? word : row + " " + word;
            if (!row.isEmpty() && type.widthPx(longer, TEXT_PX, bold) > WIDE_PX - indent) {
                line(row.toString(), TEXT_PX, bold, role, indent, LEAD_PX);
                row.setLength(0);
                row.append(word);
            } else {
                row.setLength(0);
                row.append(longer);
            }
        }
        line(row.toString(), TEXT_PX, bold, role, indent, LEAD_PX);
    }

    private void line(String text, double sizePx, boolean bold, Role role, double indent, double lead) {
        groups.add(new Group(link, link == null ? null : text, Group.Kind.LABEL,
                List.of(new Mark.Text(new Point(SIDE_PX + indent, y + sizePx), text, sizePx, bold, Mark.Anchor.START, role))));
        wide = StrictMath.max(wide, indent + type.widthPx(text, sizePx, bold));
        y += lead;
    }

    private static Mark ruled(Mark.Line rule, double to) {
        Point from = rule.points().get(0);
        return new Mark.Line(List.of(from, new Point(to, from.y())), rule.stroke());
    }

    private Scene scene(String title) {
        double width = StrictMath.ceil(StrictMath.min(wide, WIDE_PX + 200) + 2 * SIDE_PX);
        double height = StrictMath.ceil(y + SIDE_PX - 4);
        SceneBuilder scene = new SceneBuilder(title, width, height);
        scene.rectangle(Fill.solid(Role.PLATE), Stroke.solid(Role.INK2, 1), 0.5, 0.5, width - 1, height - 1);
        rules.forEach(rule -> scene.mark(ruled((Mark.Line) rule, width - SIDE_PX)));
        groups.forEach(scene::add);
        return scene.build();
    }
}
