// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Layout;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.loomwright.diagram.paint.Theme;

/**
 * The pills of a case strip in one row: as many as fit, the chosen one always among them; a chooser at the end holds the others.
 */
final class CaseRow extends Composite {
    private static final int GAP_PX = 4;
    private final List<CasePill> pills = new ArrayList<>();
    private final CasePill more;
    private List<CasePill> hidden = List.of();

    CaseRow(Composite parent) {
        super(parent, SWT.NONE);
        more = new CasePill(this, "", "", this::choose);
        setLayout(new Row());
    }

    /** Shows these pills, children of the row, in this order. */
    void pills(List<CasePill> wanted) {
        pills.clear();
        pills.addAll(wanted);
        // last in the order of the keyboard too
        more.moveBelow(null);
        layout(true);
    }

    /** Those that did not fit. */
    List<CasePill> hidden() {
        return hidden;
    }

    /** The chooser. */
    CasePill more() {
        return more;
    }

    /** Colours of the chooser. */
    void theme(Theme theme) {
        // one finding shows in many cases: the worst case counts, a sum would tell of findings that are not there
        int errors = hidden.stream().mapToInt(pill -> pill.count().errors()).max().orElse(0);
        int warnings = hidden.stream().mapToInt(pill -> pill.count().warnings()).max().orElse(0);
        more.show(new FindingCount(errors, warnings, 0, 0), false, theme);
    }

    private void choose() {
        Menu menu = new Menu(getShell(), SWT.POP_UP);
        for (CasePill pill : hidden) {
            MenuItem item = new MenuItem(menu, SWT.PUSH);
            FindingCount count = pill.count();
            item.setText((count.errors() + count.warnings() == 0 ? pill.words()
                    : Words.of("strip.pill", pill.words(), count.errors(), count.warnings())).replace("&", "&&"));
            item.addListener(SWT.Selection, event -> pill.choose());
        }
        Rectangle at = more.getBounds();
        menu.setLocation(toDisplay(at.x, at.y + at.height));
        menu.addListener(SWT.Hide, event -> getDisplay().asyncExec(menu::dispose));
        menu.setVisible(true);
    }

    private final class Row extends Layout {
        @Override
        protected Point computeSize(Composite row, int wide, int high, boolean flush) {
            int all = 0;
            for (CasePill pill : pills) {
                all += pill.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + GAP_PX;
            }
            return new Point(wide == SWT.DEFAULT ? all : wide, more.computeSize(SWT.DEFAULT, SWT.DEFAULT).y);
        }

        @Override
        protected void layout(Composite row, boolean flush) {
            int width = getClientArea().width;
            List<CasePill> seen = fitting(width);
            List<CasePill> others = new ArrayList<>(pills);
            others.removeAll(seen);
            hidden = others;
            int x = 0;
            for (CasePill pill : pills) {
                boolean shown = seen.contains(pill);
                pill.setVisible(shown);
                if (shown) {
                    Point size = pill.computeSize(SWT.DEFAULT, SWT.DEFAULT);
                    pill.setBounds(x, 0, size.x, size.y);
                    x += size.x + GAP_PX;
                }
            }
            more.setVisible(!hidden.isEmpty());
            more.words(Words.of("strip.more", hidden.size()));
            theme(more.theme());
            Point size = more.computeSize(SWT.DEFAULT, SWT.DEFAULT);
            more.setBounds(x, 0, size.x, size.y);
        }

        /** All, or the first ones that leave room for the chosen one and the chooser. */
        private List<CasePill> fitting(int width) {
            int all = -GAP_PX;
            for (CasePill pill : pills) {
                all += pill.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + GAP_PX;
            }
            if (all <= width) {
                return List.copyOf(pills);
            }
            more.words(Words.of("strip.more", pills.size()));
            int left = width - more.widestPx();
            List<CasePill> seen = new ArrayList<>();
            for (CasePill pill : pills) {
                if (pill.chosen()) {
                    seen.add(pill);
                    left -= pill.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + GAP_PX;
                }
            }
            for (CasePill pill : pills) {
                int wide = pill.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + GAP_PX;
                if (!pill.chosen() && wide > left) {
                    break;
                }
                if (!pill.chosen()) {
                    seen.add(pill);
                    left -= wide;
                }
            }
            return seen;
        }
    }
}
