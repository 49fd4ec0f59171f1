// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.List;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.FittedText;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.symbol.Badge;

/** Lists below the drawing: findings, zones, key; scale bar and title block at the bottom. */
final class PlanFoot {
    /** Height of the foot, px. */
    static final double HEIGHT_PX = 262;
    private static final double BLOCK_PX = 42;
    private static final double HEAD_PX = 30;
    private static final double KEY_PX = 430;
    private static final double FINDINGS_SHARE = 0.46;
    private static final int MOST_FINDINGS = 5;
    private static final int ZONE_ROWS = 9;
    private static final double ZONE_ROW_PX = 19;
    private static final double FINDING_PX = 35;
    /** The largest type of the foot, px. */
    private static final double HEAD_TEXT_PX = 13;
    private final PlanSheet sheet;
    private final SceneBuilder scene;
    private final TextMeasure type;

    PlanFoot(PlanSheet sheet, SceneBuilder scene, TextMeasure type) {
        this.sheet = sheet;
        this.scene = scene;
        this.type = type;
    }

    /**
     * A finding in the list.
     *
     * @param element id of its element
     * @param head    element and title
     * @param detail  rule and figures
     */
    record Line(String element, Badge badge, String head, String detail) {
    }

    /** A field of the title block. */
    record Field(String name, String value) {
    }

    void titleBlock(List<Field> fields) {
        scene.group(null, "title block");
        double right = sheet.widthPx() - PlanSheet.FRAME_PX;
        double y = sheet.heightPx() - PlanSheet.FRAME_PX - BLOCK_PX;
        for (int i = fields.size() - 1; i >= 0; i--) {
            Field field = fields.get(i);
            double width = StrictMath.max(90, 16 + StrictMath.max(type.widthPx(field.name(), 12, false),
                    type.widthPx(field.value(), 12, true)));
            right -= width;
            scene.rectangle(Fill.solid(Role.PLATE), Stroke.solid(Role.INK2, 1), right, y, width, BLOCK_PX);
            scene.text(right + 8, y + 17, field.name(), 12, false, Anchor.START, Role.INK2);
            scene.text(right + 8, y + 33, field.value(), 12, true, Anchor.START, Role.INK);
        }
    }

    void scaleBar(Projection to) {
        new PlanDimensions(scene, type).scaleBar(sheet.left() + 4, sheet.bottom() + 8, to.pxPerMm());
    }

    void key(boolean overlay) {
        double x = sheet.right() - KEY_PX;
        head(x, "Key", KEY_PX);
        new PlanKey(scene, overlay).paint(x, sheet.footTop() + HEAD_PX);
    }

    void findings(List<Line> findings, boolean analysed) {
        double width = FINDINGS_SHARE * (sheet.right() - KEY_PX - sheet.left()) - 30;
        double x = sheet.left();
        head(x, "Findings on this sheet", width);
        double y = sheet.footTop() + HEAD_PX;
        if (findings.isEmpty()) {
            scene.text(x, y + 14, analysed ? "none" : "not analysed yet", 12, false, Anchor.START, Role.INK2);
        }
        int shown = StrictMath.min(MOST_FINDINGS, findings.size());
        for (int i = 0; i < shown; i++) {
            Line line = findings.get(i);
            scene.group(Group.Kind.LABEL, line.element(), line.head());
            scene.marks(line.badge().marks(x + 10, y + i * FINDING_PX + 15));
            scene.text(x + 32, y + i * FINDING_PX + 12, fitted(line.head(), width - 32, true), 12, true, Anchor.START, Role.INK);
            scene.text(x + 32, y + i * FINDING_PX + 27, fitted(line.detail(), width - 32, false), 12, false, Anchor.START,
                    Role.INK2);
        }
        if (findings.size() > shown) {
            scene.group(null, "more findings");
            scene.text(x + 32, y + shown * FINDING_PX + 10, (findings.size() - shown) + " more on this sheet", 12, false, Anchor.START,
                    Role.INK2);
        }
    }

    void zones(List<PlanContent.Zone> zones) {
        double left = sheet.left() + FINDINGS_SHARE * (sheet.right() - KEY_PX - sheet.left());
        double width = sheet.right() - KEY_PX - 30 - left;
        head(left, "Zones: highest ambient, protection wanted", width);
        int columns = zones.size() > ZONE_ROWS ? 2 : 1;
        int rows = (zones.size() + columns - 1) / columns;
        double column = width / columns;
        int most = StrictMath.min(zones.size(), columns * ZONE_ROWS);
        for (int i = 0; i < most; i++) {
            PlanContent.Zone zone = zones.get(i);
            double x = left + i / StrictMath.min(rows, ZONE_ROWS) * column;
            double y = sheet.footTop() + HEAD_PX + i % StrictMath.min(rows, ZONE_ROWS) * ZONE_ROW_PX;
            scene.group(Group.Kind.LABEL, zone.id(), "zone " + zone.label());
            scene.rectangle(Fill.solid(zone.hot() ? Role.HOT : zone.wet() ? Role.WET : Role.DRY), Stroke.solid(Role.INK3, 0.75), x,
                    y + 3, 14, 10);
            double environment = type.widthPx(zone.environment(), 12, false);
            scene.text(x + 20, y + 12, fitted(zone.label(), column - 50 - environment, true), 12, true, Anchor.START, Role.INK);
            scene.text(x + column - 16, y + 12, zone.environment(), 12, false, Anchor.END, Role.INK2);
        }
        if (zones.size() > most) {
            scene.text(left, sheet.footTop() + HEAD_PX + ZONE_ROWS * ZONE_ROW_PX + 12, (zones.size() - most) + " more zones", 12, false,
                    Anchor.START, Role.INK2);
        }
    }

    private void head(double x, String words, double width) {
        scene.group(null, words);
        scene.text(x, sheet.footTop() + 12, fitted(words, width, true), 13, true, Anchor.START, Role.INK);
        scene.line(Stroke.solid(Role.HAIR, 1), new Point(x, sheet.footTop() + 20), new Point(x + width, sheet.footTop() + 20));
    }

    /** The text, cut at the end where it is too long. */
    String fitted(String words, double widthPx, boolean bold) {
        return FittedText.of(type, words, HEAD_TEXT_PX, bold, widthPx);
    }
}
