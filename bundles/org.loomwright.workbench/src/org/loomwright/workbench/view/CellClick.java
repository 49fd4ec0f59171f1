// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.function.ObjIntConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Tells which cell of a table was clicked. */
final class CellClick {
    private CellClick() {
    }

    /** Calls back with row and column of each click; the row is selected then. */
    static void on(Table table, ObjIntConsumer<TableItem> clicked) {
        table.addListener(SWT.MouseUp, event -> {
            TableItem item = table.getItem(new Point(event.x, event.y));
            for (int column = 0; item != null && column < table.getColumnCount(); column++) {
                if (item.getBounds(column).contains(event.x, event.y)) {
                    clicked.accept(item, column);
                    return;
                }
            }
        });
    }
}
