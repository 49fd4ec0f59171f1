// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.core.runtime.Platform;
import org.loomwright.workbench.app.Ids;

/**
 * A page of the help in the mark-up of form texts; its first paragraph is its title.
 *
 * @param id   name by which others link to it
 * @param text the mark-up
 */
record HelpPage(String id, String text) {
    private static final Pattern TITLE = Pattern.compile("<span[^>]*font=\"title\"[^>]*>([^<]*)</span>");

    /** The page in a file of the bundle. */
    static HelpPage bundled(String id) {
        URL file = Platform.getBundle(Ids.PLUGIN).getEntry("help/" + id + ".xml");
        try (InputStream in = file.openStream()) {
            return new HelpPage(id, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** The mark-up of a title. */
    static String titleMarkup(String title) {
        return "<p><span color=\"title\" font=\"title\">" + escaped(title) + "</span></p>";
    }

    /** Text with what the mark-up would take for its own written out. */
    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** Its title; the id of a page without one. */
    String title() {
        Matcher title = TITLE.matcher(text);
        return title.find() ? title.group(1).replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&") : id;
    }

    /** True when each of the words stands on it. */
    boolean speaksOf(String words) {
        String plain = text.replaceAll("<[^>]*>", " ").toLowerCase(Locale.ROOT);
        for (String word : words.toLowerCase(Locale.ROOT).strip().split("\\s+")) {
            if (!plain.contains(word)) {
                return false;
            }
        }
        return true;
    }
}
