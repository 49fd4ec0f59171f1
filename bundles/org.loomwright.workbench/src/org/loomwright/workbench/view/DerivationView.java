// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.StudyResult.ElementFigures;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.Words;

/** How the figures of the selected element came about in the case looked at: formula, inputs with their origin, source. */
public final class DerivationView extends DocumentView {
    private TreeViewer tree;
    private Object shownFor;

    /** A line of the tree. */
    private record Line(String text, List<Line> below) {
    }

    /** What the tree shows is made for this. */
    private record Subject(Object analysis, String element, String caseName) {
    }

    @Override
    protected void create(Composite parent) {
        tree = new TreeViewer(parent, SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL);
        tree.setContentProvider(new Lines());
        tree.setLabelProvider(new LabelProvider() {
            @Override
            public String getText(Object element) {
                return ((Line) element).text();
            }
        });
    }

    @Override
    protected void update(VehicleDocument shown) {
        String element = shown == null ? null : shown.selection().single();
        if (element == null || shown.analysis() == null || !shown.analysis().worked()) {
            shownFor = null;
            setContentDescription(Words.of("derivation.none"));
            tree.setInput(List.of());
            return;
        }
        Subject subject = new Subject(shown.analysis(), element, shown.caseName());
        if (subject.equals(shownFor)) {
            return;
        }
        shownFor = subject;
        String name = new Designations(shown.analysis().result().arrangement()).shown(element);
        List<Line> lines = lines(shown.analysis().result().explainer().explain(element), shown.caseName());
        setContentDescription(lines.isEmpty() ? Words.of("derivation.nofigures", name) : name);
        tree.setInput(lines);
        tree.expandToLevel(2);
    }

    private static List<Line> lines(List<ElementFigures> figures, String caseName) {
        List<Line> lines = new ArrayList<>();
        for (ElementFigures each : figures) {
            if (caseName == null || each.caseName() == null || each.caseName().equals(caseName)) {
                String where = each.caseName() == null ? Words.of("derivation.all") : each.caseName();
                each.derivations().forEach(derivation -> lines.add(line(derivation, where)));
            }
        }
        return lines;
    }

    private static Line line(Derivation derivation, String where) {
        List<Line> below = new ArrayList<>();
        below.add(new Line(derivation.formula(), List.of()));
        for (Derivation.Input input : derivation.inputs()) {
            below.add(new Line(input.name() + " = " + input.value() + (input.origin() == null ? "" : "   " + input.origin()),
                    List.of()));
        }
        if (derivation.source() != null) {
            below.add(new Line(Words.of("derivation.source", derivation.source()), List.of()));
        }
        return new Line(derivation.figure() + " = " + derivation.value() + "   " + where, below);
    }

    private static final class Lines implements ITreeContentProvider {
        @Override
        public Object[] getElements(Object input) {
            return ((List<?>) input).toArray();
        }

        @Override
        public Object[] getChildren(Object parent) {
            return ((Line) parent).below().toArray();
        }

        @Override
        public Object getParent(Object element) {
            return null;
        }

        @Override
        public boolean hasChildren(Object element) {
            return !((Line) element).below().isEmpty();
        }
    }

    @Override
    public void setFocus() {
        tree.getTree().setFocus();
    }
}
