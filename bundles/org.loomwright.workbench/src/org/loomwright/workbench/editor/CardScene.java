// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.symbol.Badge;
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
    private final List<Mark> marks = new ArrayList<>();
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
     * @param figures     figures of the case looked at, one line each
     * @param findings    findings, the worst first
     */
    static Scene of(String designation, String words, List<String> figures, List<Finding> findings, TextMeasure type) {
        CardScene card = new CardScene(type);
        card.line(designation, 14, true, Role.INK, 0, 20);
        if (!words.isBlank()) {
            card.wrapped(words, Role.INK2, 0);
        }
        figures.forEach(figure -> card.wrapped(figure, Role.INK, 0));
        findings.stream().limit(FINDINGS).forEach(card::finding);
        if (findings.size() > FINDINGS) {
            card.y += 6;
            card.wrapped(Words.of("card.more", findings.size() - FINDINGS), Role.INK2, 0);
        }
        return card.scene(designation);
    }

    private void finding(Finding finding) {
        y += 6;
        marks.add(new Mark.Line(List.of(new Point(SIDE_PX, y), new Point(SIDE_PX + WIDE_PX, y)), Stroke.solid(Role.HAIR, 1)));
        y += 8;
        Badge badge = BadgeImages.badge(finding);
        marks.addAll(badge.marks(SIDE_PX + BADGE_PX / 2, y + TEXT_PX * 0.6, BADGE_PX));
        double indent = BADGE_PX + 8;
        wrapped(finding.title(), Role.INK, indent, true);
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
        part("card.mend", finding.mends().stream().limit(FINDINGS).map(Mend::text).toList(), indent);
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
        marks.add(new Mark.Text(new Point(SIDE_PX + indent, y + sizePx), text, sizePx, bold, Mark.Anchor.START, role));
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
        for (Mark mark : marks) {
            scene.mark(mark instanceof Mark.Line rule && rule.stroke().tone() == Role.HAIR ? ruled(rule, width - SIDE_PX) : mark);
        }
        return scene.build();
    }
}
