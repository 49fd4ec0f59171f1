// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.help;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.ui.services.IServiceLocator;
import org.loomwright.workbench.app.Ids;

/** All pages in the order in which they are listed, and which of them belongs to a part of the window. */
final class HelpPages {
    /** Where a reader begins. */
    static final String FIRST = "begin";
    private static final List<String> BUNDLED = List.of("begin", "cautions", "window", "vehicle", "arrangement", "diagrams",
            "findings", "cases", "sizing", "protection", "earth", "compare", "measure", "libraries", "practice", "import", "output",
            "files", "words");
    private static final Map<String, String> OF_PARTS = Map.ofEntries(Map.entry(Ids.EDITOR, "diagrams"),
            Map.entry(Ids.FINDINGS, "findings"), Map.entry(Ids.PROBLEMS, "findings"), Map.entry(Ids.COMPARISON, "compare"),
            Map.entry(Ids.CHART, "protection"), Map.entry(Ids.STUDY, "sizing"), Map.entry(Ids.VEHICLES, "window"),
            Map.entry(Ids.FILE_EDITOR, "files"), Map.entry(Ids.DERIVATION, "window"), Map.entry(Ids.PROPERTIES, "vehicle"),
            Map.entry(Ids.OUTLINE, "vehicle"));

    private final Map<String, HelpPage> pages = new LinkedHashMap<>();

    /** Reads the pages; keys are those that are bound now. */
    HelpPages(IServiceLocator services) {
        for (String id : BUNDLED) {
            add(HelpPage.bundled(id));
        }
        add(RulesPage.make());
        add(KeysPage.make(services));
    }

    private void add(HelpPage page) {
        pages.put(page.id(), page);
    }

    /** All pages. */
    List<HelpPage> all() {
        return List.copyOf(pages.values());
    }

    /** The page of an id. */
    Optional<HelpPage> page(String id) {
        return Optional.ofNullable(pages.get(id));
    }

    /** Pages on which each of the words stands; all for no words. */
    List<HelpPage> about(String words) {
        return words.isBlank() ? all() : all().stream().filter(page -> page.speaksOf(words)).toList();
    }

    /** Id of the page that helps with a part of the window. */
    static String ofPart(String part) {
        return OF_PARTS.getOrDefault(part, FIRST);
    }
}
