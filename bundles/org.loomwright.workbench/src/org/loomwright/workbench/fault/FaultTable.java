// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.fault;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import org.loomwright.model.files.ReadFault;

/** What is wrong with a file that could not be opened: where, what, and what was expected. */
public final class FaultTable extends Composite {
    private static final String[] HEADS = {Messages.Fault_file, Messages.Fault_line, Messages.Fault_column,
        Messages.Fault_element, Messages.Fault_what, Messages.Fault_expected};
    private static final int[] WIDTHS = {120, 60, 70, 260, 380, 300};

    private final Table table;

    /** The table over a list of faults, the worst of which keeps the file from being opened. */
    public FaultTable(Composite parent, List<ReadFault> faults) {
        this(parent, faults, NLS.bind(Messages.Fault_head, faults.size()));
    }

    /** The table under a text of its own. */
    public FaultTable(Composite parent, List<ReadFault> faults, String above) {
        super(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().margins(12, 12).applyTo(this);
        Label head = new Label(this, SWT.WRAP);
        head.setText(above);
        GridDataFactory.fillDefaults().grab(true, false).hint(600, SWT.DEFAULT).applyTo(head);
        table = new Table(this, SWT.FULL_SELECTION | SWT.BORDER | SWT.SINGLE);
        table.setHeaderVisible(true);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table);
        for (int column = 0; column < HEADS.length; column++) {
            TableColumn each = new TableColumn(table, column == 1 || column == 2 ? SWT.RIGHT : SWT.LEFT);
            each.setText(HEADS[column]);
            each.setWidth(WIDTHS[column]);
        }
        for (ReadFault fault : faults) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(new String[] {name(fault.file()), String.valueOf(fault.line()), String.valueOf(fault.column()),
                text(fault.element()), fault.message(), text(fault.expected())});
            item.setData(fault);
            item.setImage(PlatformUI.getWorkbench().getSharedImages().getImage(ISharedImages.IMG_OBJS_ERROR_TSK));
        }
    }

    /** Tells which fault is picked. */
    public void onPick(Consumer<ReadFault> listener) {
        table.addListener(SWT.Selection, event -> listener.accept((ReadFault) event.item.getData()));
    }

    @Override
    public boolean setFocus() {
        return table.setFocus();
    }

    private static String name(String file) {
        Path last = file == null ? null : Path.of(file).getFileName();
        return last == null ? "" : last.toString();
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }
}
