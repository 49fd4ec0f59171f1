// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.core.commands.Command;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.check.RuleCatalogue;
import org.loomwright.workbench.app.Ids;
import org.loomwright.workbench.app.ThemeWatch;
import org.loomwright.workbench.app.Ui;

/** The help: every page can be shown, every link leads somewhere, F1 opens the page of the active part. */
class HelpViewTest {
    private static final Pattern LINK = Pattern.compile("href=\"([^\"]*)\"");

    private static HelpPages pages() {
        return new HelpPages(PlatformUI.getWorkbench());
    }

    @AfterEach
    void close() {
        ThemeWatch.setDark(false);
        Ui.page().hideView(Ui.page().findView(HelpView.ID));
    }

    @Test
    void everyPageHasItsTitleAndCanBeShown() throws PartInitException {
        HelpView view = (HelpView) Ui.page().showView(HelpView.ID);
        for (HelpPage page : pages().all()) {
            assertFalse(page.title().equals(page.id()), "no title: " + page.id());
            view.show(page.id());
            assertEquals(page.id(), view.shown());
        }
        view.show("sizing");
        Ui.screenshot("help");
        ThemeWatch.setDark(true);
        Ui.screenshot("help-dark");
    }

    @Test
    void titlesDoNotRepeat() {
        List<String> titles = pages().all().stream().map(HelpPage::title).toList();
        assertEquals(titles.size(), new TreeSet<>(titles).size(), titles.toString());
    }

    @Test
    void everyLinkLeadsSomewhere() {
        for (HelpPage page : pages().all()) {
            Matcher links = LINK.matcher(page.text());
            while (links.find()) {
                String link = links.group(1);
                String target = link.substring(link.indexOf(':') + 1);
                boolean there = switch (link.substring(0, link.indexOf(':'))) {
                    case "page" -> pages().page(target).isPresent();
                    case "view" -> PlatformUI.getWorkbench().getViewRegistry().find(target) != null;
                    case "new" -> PlatformUI.getWorkbench().getNewWizardRegistry().findWizard(target) != null
                            || PlatformUI.getWorkbench().getImportWizardRegistry().findWizard(target) != null;
                    default -> false;
                };
                assertTrue(there, page.id() + " links to " + link);
            }
        }
    }

    @Test
    void everyRuleStandsOnThePageOfRules() {
        String text = pages().page(RulesPage.ID).orElseThrow().text();
        for (String slug : RuleCatalogue.standard().slugs()) {
            assertTrue(text.contains("<b>" + slug + "</b>"), slug);
        }
    }

    @Test
    void keysThatAreBoundStandOnTheirPage() {
        String text = pages().page(KeysPage.ID).orElseThrow().text();
        assertTrue(text.contains("Undo") && text.contains("Ctrl+Z"), text);
    }

    @Test
    void wordsFindThePagesThatSpeakOfThem() {
        List<String> found = pages().about("rusty strap").stream().map(HelpPage::id).toList();
        assertTrue(found.contains("earth"), found.toString());
        assertFalse(found.contains("compare"), found.toString());
        assertEquals(pages().all().size(), pages().about("  ").size());
    }

    @Test
    void theHelpOpensAtThePageOfTheActivePart() throws Exception {
        Ui.page().showView(Ids.FINDINGS);
        Ui.page().activate(Ui.page().findView(Ids.FINDINGS));
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand("org.loomwright.workbench.help.pages", null);
        HelpView view = (HelpView) Ui.page().findView(HelpView.ID);
        assertNotNull(view);
        assertEquals("findings", view.shown());
        Command help = PlatformUI.getWorkbench().getService(ICommandService.class).getCommand("org.loomwright.workbench.help.pages");
        assertTrue(help.isHandled());
    }

    @Test
    void textsOfTheProgramAreNoMarkup() {
        assertEquals("a &lt;b&gt; &amp; c", HelpPage.escaped("a <b> & c"));
        HelpPage page = new HelpPage("x", "<form>" + HelpPage.titleMarkup("1 < 2 & 3") + "</form>");
        assertEquals("1 < 2 & 3", page.title());
        FormToolkit toolkit = new FormToolkit(Display.getCurrent());
        try {
            toolkit.createFormText(Ui.page().getWorkbenchWindow().getShell(), SWT.NONE == 1).setText(page.text(), true, false);
        } finally {
            toolkit.dispose();
        }
    }
}
