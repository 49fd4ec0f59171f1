// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.List;
import org.loomwright.engine.result.StudyResult.ElementFigures;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.export.table.Table;

/**
 * One table of a study, with what its rows stand for.
 *
 * @param name     short name, for a tab
 * @param legend   what its figures mean, in a line; may be empty
 * @param table    the figures
 * @param elements id of the element of each row; null for rows that stand for none
 * @param origin   how the figures of a row came about
 */
public record StudyTable(String name, String legend, Table table, List<String> elements, Origin origin) {
    /** How figures came about. */
    @FunctionalInterface
    public interface Origin {
        /** Derivations of a row's figures; empty when none are known. */
        List<ElementFigures> of(int row);
    }

    public StudyTable {
        // rows without an element are null: List.copyOf would refuse them
        elements = java.util.Collections.unmodifiableList(new java.util.ArrayList<>(elements));
        if (elements.size() != table.rows().size()) {
            throw new IllegalArgumentException(elements.size() + " elements for " + table.rows().size() + " rows");
        }
    }

    /** A table whose rows are derived by the explainer of a study. */
    static StudyTable of(String name, String legend, Table table, List<String> elements, StudyResult.Explainer explainer) {
        return new StudyTable(name, legend, table, elements,
                row -> elements.get(row) == null ? List.of() : explainer.explain(elements.get(row)));
    }
}
