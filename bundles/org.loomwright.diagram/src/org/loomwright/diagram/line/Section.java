// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A section of the sheet, drawn in one piece.
 *
 * @param title      what it is about
 * @param supply     supply side
 * @param loads      what takes current in it, by the id of its node
 * @param returns    returns
 * @param collectors what gathers the returns of its loads, by the id of its node
 */
record Section(String title, LineGraph supply, Map<String, LoadDrawing> loads, LineGraph returns,
        Map<String, ReturnGraph.Collector> collectors) {

    /** All sections of a partition. */
    static List<Section> of(Drafting drafting, SupplyGraph supply, Partition.Sections cut) {
        ReturnGraph returns = ReturnGraph.of(drafting, supply.loads(), cut.sectionOf());
        List<LineGraph> above = supply.graph().cut(cut.sectionOf(), cut.count(), drafting.measure());
        List<LineGraph> below = returns.graph().cut(returns.sectionOf(), cut.count(), drafting.measure());
        List<Section> sections = new ArrayList<>();
        for (int i = 0; i < cut.count(); i++) {
            int section = i;
            Map<String, LoadDrawing> loads = new LinkedHashMap<>();
            supply.loads().forEach((id, load) -> {
                if (cut.sectionOf().get(id) == section) {
                    loads.put(id, load);
                }
            });
            double width = LoadDrawing.width(loads.values());
            loads.values().forEach(load -> above.get(section).put(load.node(width)));
            Map<String, ReturnGraph.Collector> collectors = new LinkedHashMap<>();
            returns.collectors().forEach((id, collector) -> {
                if (collector.section() == section) {
                    collectors.put(id, collector);
                }
            });
            sections.add(new Section(title(drafting, cut.roots().get(i)), above.get(i), loads, below.get(i), collectors));
        }
        return sections;
    }

    private static String title(Drafting drafting, String root) {
        if (root == null) {
            return "Sources";
        }
        Unit unit = drafting.content().units().get(root);
        return (unit.designation() + "  " + unit.label()).strip();
    }

    /** Number of ends of lines that go on elsewhere. */
    int stubs() {
        return supply.stubs().size() + returns.stubs().size();
    }
}
