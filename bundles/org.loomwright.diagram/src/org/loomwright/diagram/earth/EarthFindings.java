// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.diagram.scene.FittedText;
import org.loomwright.diagram.scene.FittedText;
import org.loomwright.diagram.scene.Group.Kind;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.services.FindingMark;
import org.loomwright.engine.result.Finding;

/** The findings about the structure in words, below the drawing. */
final class EarthFindings {
    private static final int MOST = 8;
    private static final double ROW_PX = 40;
    private static final double HEAD_PX = 64;
    private static final double TEXT_PX = 34;

    private record Row(String element, FindingMark mark, String title, String mend) {
    }

    private final List<Row> rows;
    private final int more;
    private final double widthPx;

    private EarthFindings(List<Row> rows, int more, double widthPx) {
        this.rows = rows;
        this.more = more;
        this.widthPx = widthPx;
    }

    static EarthFindings of(DrawingRequest request, EarthContent content, TextMeasure type, double widthPx) {
        List<Row> rows = new ArrayList<>();
        if (request.study() != null) {
            Set<String> ids = new LinkedHashSet<>();
            content.bodies().forEach(body -> ids.add(body.id()));
            content.joins().forEach(join -> ids.add(join.id()));
            content.studs().stream().filter(stud -> !"case".equals(stud.shown())).forEach(stud -> ids.add(stud.id()));
            for (String id : ids) {
                FindingMark mark = request.study().markWithin(id);
                for (Finding finding : mark == null ? List.<Finding>of() : mark.findings()) {
                    String mend = finding.mends().isEmpty() ? "" : finding.mends().get(0).text();
                    rows.add(new Row(id, request.study().mark(finding), FittedText.of(type, finding.title(), 12, true, widthPx - TEXT_PX),
                            FittedText.of(type, mend, 12, false, widthPx - TEXT_PX)));
                }
            }
        }
        rows.sort((a, b) -> a.mark().badge().compareTo(b.mark().badge()));
        int shown = StrictMath.min(MOST, rows.size());
        return new EarthFindings(rows.subList(0, shown), rows.size() - shown, widthPx);
    }

    double heightPx() {
        return rows.isEmpty() ? 0 : HEAD_PX + ROW_PX * rows.size() + (more > 0 ? 20 : 0);
    }

    void paint(SceneBuilder scene, double x, double top) {
        if (rows.isEmpty()) {
            return;
        }
        double y = top + 42;
        scene.group(null, "findings");
        scene.text(x, y, "Findings about the structure", 13, true, Anchor.START, Role.INK);
        scene.line(Stroke.solid(Role.HAIR, 1), new Point(x, y + 9), new Point(x + widthPx, y + 9));
        y += 30;
        for (Row row : rows) {
            scene.group(Kind.BADGE, row.element(), row.title());
            scene.marks(row.mark().badge().marks(x + 12, y + 4));
            scene.group(Kind.LABEL, row.element(), row.title());
            scene.text(x + TEXT_PX, y, row.title(), 12, true, Anchor.START, Role.INK);
            if (!row.mend().isEmpty()) {
                scene.text(x + TEXT_PX, y + 16, row.mend(), 12, false, Anchor.START, Role.INK2);
            }
            y += ROW_PX;
        }
        if (more > 0) {
            scene.group(null, "further findings");
            scene.text(x + TEXT_PX, y, "and " + more + " more", 12, false, Anchor.START, Role.INK2);
        }
    }
}
