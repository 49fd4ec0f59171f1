// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.diagram.layout.Placed;

/** Where everything of a section lies, from the section's upper left corner. */
final class SectionLayout {
    /** Room for the head, px. */
    static final double HEAD_PX = 34;
    private static final double RETURNS_PX = 36;
    private static final double COLLECTOR_PX = 12;
    private final Section section;
    private final Placed above;
    private final Placed below;
    private final double right;
    private final double figuresX;
    private final double width;
    private final double height;
    private final Map<String, Double> collectorX = new LinkedHashMap<>();

    SectionLayout(Section section, LoadColumn column, LayoutMemory memory) {
        this.section = section;
        above = section.supply().layout(memory);
        below = section.returns().layout(memory);
        right = StrictMath.max(above.width(), below.width());
        List<String> order = new ArrayList<>(section.collectors().keySet());
        // the lowest line gets the outermost place, so that collectors do not cross each other
        order.sort((a, b) -> Double.compare(below.nodes().get(a).y(), below.nodes().get(b).y()));
        for (int i = 0; i < order.size(); i++) {
            collectorX.put(order.get(i), right + 20 + COLLECTOR_PX * i);
        }
        figuresX = right + (order.isEmpty() ? 12 : 20 + COLLECTOR_PX * order.size() + 8);
        width = StrictMath.max(section.loads().isEmpty() ? right : figuresX + column.width(section.loads().keySet()),
                column.titleWidth(section.title()));
        height = below.nodes().isEmpty() ? HEAD_PX + above.height() : returnsY() + below.height();
    }

    Section section() {
        return section;
    }

    Placed above() {
        return above;
    }

    Placed below() {
        return below;
    }

    double supplyY() {
        return HEAD_PX;
    }

    /** Left side of the returns. */
    double returnsX() {
        return right - below.width();
    }

    double returnsY() {
        return above.nodes().isEmpty() ? HEAD_PX : HEAD_PX + above.height() + RETURNS_PX;
    }

    /** Left side of the loads' names and figures. */
    double figuresX() {
        return figuresX;
    }

    double collectorX(String id) {
        return collectorX.get(id);
    }

    /** Left side of the loads; the right end without any. */
    double loadsX() {
        return section.loads().keySet().stream().mapToDouble(id -> above.nodes().get(id).x()).min().orElse(right);
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }
}
