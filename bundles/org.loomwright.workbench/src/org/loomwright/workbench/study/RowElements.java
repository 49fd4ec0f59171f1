// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.export.table.Table;
import org.loomwright.headless.check.ElementIds;

/** Finds the elements that the rows of a table stand for, by what stands in their first column. */
final class RowElements {
    private final ElementIds ids;

    RowElements(Plan plan) {
        ids = ElementIds.of(plan);
    }

    /** One id a row; null where the first column names no element. A row without a name belongs to the one above. */
    List<String> of(Table table) {
        List<String> elements = new ArrayList<>();
        String above = null;
        for (List<Object> row : table.rows()) {
            String shown = row.get(0) instanceof String text ? text : "";
            above = shown.isEmpty() ? above : find(shown);
            elements.add(above);
        }
        return elements;
    }

    /** A name may be followed by its label in brackets, a conductor's by its colour. */
    private String find(String shown) {
        String id = ids.find(shown);
        int cut = shown.indexOf(" (");
        if (id == null && cut > 0) {
            id = ids.find(shown.substring(0, cut));
        }
        int colour = shown.indexOf(' ');
        return id == null && colour > 0 ? ids.find(shown.substring(0, colour)) : id;
    }
}
