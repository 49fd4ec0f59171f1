// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.help;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.ListViewer;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.events.HyperlinkAdapter;
import org.eclipse.ui.forms.events.HyperlinkEvent;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.ScrolledFormText;
import org.eclipse.ui.part.ViewPart;
import org.loomwright.workbench.app.Ids;
import org.loomwright.workbench.app.ThemeWatch;

/** The help: pages at the left, found by their words; the page chosen at the right. */
public final class HelpView extends ViewPart {
    /** Id of the view. */
    public static final String ID = Ids.PLUGIN + ".help";

    private final Deque<String> before = new ArrayDeque<>();
    private HelpPages pages;
    private FormToolkit toolkit;
    private ListViewer list;
    private Text words;
    private ScrolledFormText text;
    private AutoCloseable themeWatch;
    private Action back;
    private String shown;

    @Override
    public void createPartControl(Composite parent) {
        pages = new HelpPages(getSite());
        toolkit = new FormToolkit(parent.getDisplay());
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
        createList(sash);
        text = new ScrolledFormText(sash, SWT.V_SCROLL | SWT.H_SCROLL, false);
        text.setFormText(toolkit.createFormText(text, true));
        text.getFormText().marginWidth = 16;
        text.getFormText().marginHeight = 12;
        HelpLinks links = new HelpLinks(getSite().getPage(), this::show);
        text.getFormText().addHyperlinkListener(new HyperlinkAdapter() {
            @Override
            public void linkActivated(HyperlinkEvent event) {
                links.follow(String.valueOf(event.getHref()));
            }
        });
        sash.setWeights(1, 3);
        back = new Action(Messages.Help_back) {
            @Override
            public void run() {
                back();
            }
        };
        back.setImageDescriptor(PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(ISharedImages.IMG_TOOL_BACK));
        back.setEnabled(false);
        getViewSite().getActionBars().getToolBarManager().add(back);
        themeWatch = ThemeWatch.onChange(this::paintAnew);
        show(HelpPages.FIRST);
    }

    private void createList(Composite parent) {
        Composite side = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(side);
        words = new Text(side, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        words.setMessage(Messages.Help_search);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(words);
        list = new ListViewer(side, SWT.V_SCROLL | SWT.SINGLE);
        list.setContentProvider(ArrayContentProvider.getInstance());
        list.setLabelProvider(new LabelProvider() {
            @Override
            public String getText(Object element) {
                return ((HelpPage) element).title();
            }
        });
        list.setInput(pages.all());
        list.addSelectionChangedListener(event -> {
            if (event.getStructuredSelection().getFirstElement() instanceof HelpPage page && !page.id().equals(shown)) {
                show(page.id());
            }
        });
        words.addModifyListener(event -> find());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(list.getControl());
    }

    private void find() {
        List<HelpPage> found = pages.about(words.getText());
        list.setInput(found);
        pages.page(shown).filter(found::contains).or(() -> found.stream().findFirst()).ifPresent(page -> show(page.id()));
    }

    /** Shows the page of an id; an id that no page has shows where a reader begins. */
    public void show(String id) {
        HelpPage page = pages.page(id).orElseGet(() -> pages.page(HelpPages.FIRST).orElseThrow());
        if (shown != null && !shown.equals(page.id())) {
            before.push(shown);
        }
        shown = page.id();
        paint(page);
    }

    /** Id of the page shown. */
    public String shown() {
        return shown;
    }

    private void back() {
        if (!before.isEmpty()) {
            shown = before.pop();
            pages.page(shown).ifPresent(this::paint);
        }
    }

    private void paint(HelpPage page) {
        back.setEnabled(!before.isEmpty());
        text.getFormText().setFont("title", JFaceResources.getHeaderFont());
        text.getFormText().setColor("title", text.getForeground());
        text.getFormText().setColor("faint", text.getDisplay().getSystemColor(SWT.COLOR_WIDGET_DISABLED_FOREGROUND));
        text.getFormText().setText(page.text(), true, false);
        text.setOrigin(0, 0);
        text.reflow(true);
        list.setSelection(new StructuredSelection(page), true);
    }

    private void paintAnew() {
        if (!text.isDisposed()) {
            pages.page(shown).ifPresent(this::paint);
        }
    }

    @Override
    public void setFocus() {
        text.setFocus();
    }

    @Override
    public void dispose() {
        try {
            if (themeWatch != null) {
                themeWatch.close();
            }
        } catch (Exception problem) {
            throw new IllegalStateException(problem);
        }
        if (toolkit != null) {
            toolkit.dispose();
        }
        super.dispose();
    }
}
