// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.StudyResult.ElementFigures;
import org.loomwright.engine.result.WireGauge;
import org.loomwright.export.table.Column;
import org.loomwright.workbench.preference.ShownFigures;
import org.loomwright.workbench.study.StudyTable;

/** One table of a study: sorted by a click on a head; a click on a row leads to its element, one on a figure to its derivation. */
final class StudyFigures {
    private static final int MARGIN_PX = 14;
    private static final int WIDEST_PX = 320;
    private static final String SECTION = "mm2";

    private final StudyTable study;
    private final Table table;
    private final List<Integer> order = new ArrayList<>();

    /**
     * A table in a parent.
     *
     * @param chosen told of the element of the row that a person chose
     */
    StudyFigures(Composite parent, StudyTable study, Consumer<String> chosen) {
        this.study = study;
        table = new Table(parent, SWT.FULL_SELECTION | SWT.SINGLE | SWT.VIRTUAL | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setHeaderVisible(true);
        table.getAccessible().addAccessibleListener(org.eclipse.swt.accessibility.AccessibleListener.getNameAdapter(
                event -> event.result = study.name()));
        for (int row = 0; row < study.table().rows().size(); row++) {
            order.add(row);
        }
        for (int column = 0; column < study.table().columns().size(); column++) {
            column(column);
        }
        table.addListener(SWT.SetData, event -> fill((TableItem) event.item, order.get(table.indexOf((TableItem) event.item))));
        table.addListener(SWT.Selection, event -> {
            String element = study.elements().get(row());
            if (element != null) {
                chosen.accept(element);
            }
            ask(row(), -1);
        });
        CellClick.on(table, (item, column) -> ask(order.get(table.indexOf(item)), column));
        refresh();
    }

    /** The widget. */
    Table table() {
        return table;
    }

    /** Shows the figures again, in the units preferred now. */
    void refresh() {
        List<Column> columns = study.table().columns();
        for (int i = 0; i < columns.size(); i++) {
            table.getColumn(i).setText(head(columns.get(i)));
        }
        table.setItemCount(order.size());
        table.clearAll();
        widths();
    }

    private static String head(Column column) {
        String unit = column.unit().isEmpty() ? "" : ShownFigures.current().unit(column.unit());
        return column.title().isEmpty() ? unit : unit.isEmpty() ? column.title() : column.title() + ", " + unit;
    }

    private void column(int index) {
        boolean number = study.table().columns().get(index).kind() == Column.Kind.NUMBER;
        TableColumn column = new TableColumn(table, number ? SWT.RIGHT : SWT.LEFT);
        column.setMoveable(true);
        column.addListener(SWT.Selection, event -> sort(index));
    }

    /** By the widest of what stands in it, so that nothing is cut off; long texts end. */
    private void widths() {
        org.eclipse.swt.graphics.GC gc = new org.eclipse.swt.graphics.GC(table);
        gc.setFont(table.getFont());
        for (int i = 0; i < table.getColumnCount(); i++) {
            int wide = gc.textExtent(table.getColumn(i).getText()).x + MARGIN_PX;
            for (List<Object> row : study.table().rows()) {
                wide = StrictMath.max(wide, gc.textExtent(words(row.get(i), study.table().columns().get(i))).x);
            }
            table.getColumn(i).setWidth(StrictMath.min(wide, WIDEST_PX) + MARGIN_PX);
        }
        gc.dispose();
    }

    private void fill(TableItem item, int row) {
        List<Object> cells = study.table().rows().get(row);
        for (int i = 0; i < cells.size(); i++) {
            item.setText(i, words(cells.get(i), study.table().columns().get(i)));
        }
    }

    private static String words(Object cell, Column column) {
        ShownFigures shown = ShownFigures.current();
        if (!(cell instanceof BigDecimal number)) {
            return cell == null ? "" : cell.toString();
        }
        if (SECTION.equals(column.unit())) {
            String gauge = shown.awg() ? WireGauge.approximately(number.doubleValue()) : null;
            return number.toPlainString() + (gauge == null ? "" : "  " + gauge);
        }
        return shown.shown(number, column.unit()).toPlainString().replace("-", "\u2212");
    }

    private int row() {
        return order.get(table.getSelectionIndex());
    }

    private void ask(int row, int column) {
        List<ElementFigures> figures = study.origin().of(row);
        Object cell = column < 0 ? null : study.table().rows().get(row).get(column);
        String unit = column < 0 ? "" : study.table().columns().get(column).unit();
        if (unit.isEmpty() && study.table().rows().get(row).size() > 1 && "unit".equals(study.table().columns().get(1).key())) {
            // tables of unlike figures name the unit in each row
            unit = String.valueOf(study.table().rows().get(row).get(1));
        }
        Quantity wanted = cell instanceof BigDecimal number ? Quantity.of(number.doubleValue(), unit.isEmpty() ? "1" : unit) : null;
        if (!figures.isEmpty()) {
            String element = study.elements().get(row);
            FigureFocus.current().ask(new FigureQuestion(String.valueOf(study.table().rows().get(row).get(0)), element, figures,
                    wanted));
        }
    }

    private void sort(int column) {
        boolean down = table.getSortColumn() == table.getColumn(column) && table.getSortDirection() == SWT.UP;
        Comparator<Integer> order1 = Comparator.comparing(row -> study.table().rows().get(row).get(column), StudyFigures::compare);
        order.sort(down ? order1.reversed() : order1);
        table.setSortColumn(table.getColumn(column));
        table.setSortDirection(down ? SWT.DOWN : SWT.UP);
        table.clearAll();
    }

    /** Empty cells last, numbers by size before texts. */
    private static int compare(Object a, Object b) {
        if (a instanceof BigDecimal x && b instanceof BigDecimal y) {
            return x.compareTo(y);
        }
        int rank = Integer.compare(rank(a), rank(b));
        return rank != 0 || a == null ? rank : a.toString().compareTo(b.toString());
    }

    private static int rank(Object cell) {
        return cell == null || "".equals(cell) ? 2 : cell instanceof BigDecimal ? 0 : 1;
    }
}
