// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.StudyResult.ElementFigures;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.Words;
import org.loomwright.workbench.preference.ShownFigures;
import org.loomwright.workbench.preference.Units;

/**
 * How figures came about: formula, inputs with their origin, source. Shows the figures of the selected element in the case looked
 * at, or the figure that a person pointed at in a drawing, a card or a table.
 */
public final class DerivationView extends DocumentView {
    private final Runnable asked = this::asked;
    private final IPropertyChangeListener units = event -> shownAnew();
    private TreeViewer tree;
    private Object shownFor;
    private FigureQuestion question;
    private String askedAt;

    /** A line of the tree; the derivation is null for lines within one. */
    record Line(String text, List<Line> below, Derivation derivation) {
    }

    /** What the tree shows is made for this. */
    private record Subject(Object analysis, String element, String caseName, FigureQuestion question) {
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
        FigureFocus.current().listen(asked);
        Units.store().addPropertyChangeListener(units);
    }

    /** The tree, for tests. */
    TreeViewer tree() {
        return tree;
    }

    private void asked() {
        question = FigureFocus.current().question();
        askedAt = document() == null ? null : document().selection().single();
        update(document());
    }

    private void shownAnew() {
        shownFor = null;
        update(document());
    }

    @Override
    protected void update(VehicleDocument shown) {
        String element = shown == null ? null : shown.selection().single();
        // a question stands until something else is selected
        if (question != null && !Objects.equals(element, askedAt) && !Objects.equals(element, question.element())) {
            question = null;
        }
        if (question != null && question.figures() != null) {
            show(new Subject(null, null, null, question), subject(shown), question.figures(), null);
            return;
        }
        String asked = question == null ? element : question.element();
        if (asked == null || shown == null || shown.analysis() == null || !shown.analysis().worked()) {
            shownFor = null;
            setContentDescription(Words.of("derivation.none"));
            tree.setInput(List.of());
            return;
        }
        Subject subject = new Subject(shown.analysis(), asked, shown.caseName(), question);
        if (!subject.equals(shownFor)) {
            String name = new Designations(shown.analysis().result().arrangement()).shown(asked);
            show(subject, name, shown.analysis().result().explainer().explain(asked), shown.caseName());
        }
    }

    private String subject(VehicleDocument shown) {
        String arrangement = shown == null || shown.arrangement() == null ? "" : shown.arrangement().getName();
        return question.subject() != null ? question.subject() : new Designations(arrangement).shown(question.element());
    }

    private void show(Subject subject, String name, List<ElementFigures> figures, String caseName) {
        if (subject.equals(shownFor)) {
            return;
        }
        shownFor = subject;
        List<Line> lines = lines(figures, caseName);
        setContentDescription(lines.isEmpty() ? Words.of("derivation.nofigures", name) : name);
        tree.setInput(lines);
        Derivation answer = question == null ? null
                : question.answer(lines.stream().map(Line::derivation).toList());
        if (answer == null) {
            tree.expandToLevel(2);
            return;
        }
        for (Line line : lines) {
            if (line.derivation() == answer) {
                tree.expandToLevel(line, 1);
                tree.setSelection(new StructuredSelection(line), true);
                return;
            }
        }
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
        ShownFigures figures = ShownFigures.current();
        List<Line> below = new ArrayList<>();
        below.add(leaf(derivation.formula()));
        for (Derivation.Input input : derivation.inputs()) {
            below.add(leaf(input.name() + " = " + figures.of(input.value())
                    + (input.origin() == null ? "" : "   " + input.origin())));
        }
        if (derivation.source() != null) {
            below.add(leaf(Words.of("derivation.source", derivation.source())));
        }
        return new Line(derivation.figure() + " = " + figures.of(derivation.value()) + "   " + where, below, derivation);
    }

    private static Line leaf(String text) {
        return new Line(text, List.of(), null);
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

    @Override
    public void dispose() {
        FigureFocus.current().forget(asked);
        Units.store().removePropertyChangeListener(units);
        super.dispose();
    }
}
