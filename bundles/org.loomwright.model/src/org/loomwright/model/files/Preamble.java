// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is known of a file before its elements are read.
 *
 * @param kind  kind of file
 * @param steps steps that bring it to the current format; none when it is current
 */
record Preamble(FileKind kind, List<Migration.Step> steps) {
    private static final Pattern ENCODING = Pattern.compile("^<\\?xml[^>]*?\\sencoding\\s*=\\s*[\"']([^\"']*)[\"']");

    /** Checks text, root and format version; null when there is no point in reading on. */
    static Preamble check(SourceText source, Migration migration, Faults faults) {
        String text = source.text();
        if (!source.isUtf8()) {
            faults.at(text.length(), null, "not a text in UTF-8", "an XML file saved as UTF-8");
            return null;
        }
        if (text.isBlank()) {
            faults.file("the file is empty", "an XML file with a root element such as vehicle:Vehicle");
            return null;
        }
        if (text.stripLeading().charAt(0) != '<') {
            faults.file("not an XML file", "text that starts with <?xml");
            return null;
        }
        Matcher encoding = ENCODING.matcher(text);
        if (encoding.find() && !isUtf8(encoding.group(1))) {
            faults.at(encoding.start(1), null, "declared as " + encoding.group(1), "encoding=\"UTF-8\"");
            return null;
        }
        int doctype = doctype(text);
        if (doctype >= 0) {
            faults.at(doctype, null, "a DOCTYPE is not read: it could pull in other files or grow without end",
                    "a file without <!DOCTYPE>");
            return null;
        }
        RootPeek root = RootPeek.at(text);
        int tag = Math.max(0, new TagScanner(text).next());
        return root == null ? new Preamble(FileKind.VEHICLE, List.of()) : ofRoot(root, tag, migration, faults);
    }

    private static Preamble ofRoot(RootPeek root, int tag, Migration migration, Faults faults) {
        for (FileKind kind : FileKind.values()) {
            if (root.namespace().startsWith(kind.namespaceBase()) && root.name().equals(kind.rootClass().getName())) {
                return ofVersion(kind, root, tag, migration, faults);
            }
        }
        faults.at(tag, null, "the root element is '" + root.name() + "'"
                + (root.namespace().isEmpty() ? "" : " of " + root.namespace()),
                "vehicle:Vehicle, parts:PartsLibrary, parts:Stock or practice:Practice, for example xmlns:vehicle=\""
                        + FileKind.VEHICLE.rootClass().getEPackage().getNsURI() + "\"");
        return null;
    }

    private static Preamble ofVersion(FileKind kind, RootPeek root, int tag, Migration migration, Faults faults) {
        String current = "format=\"" + FormatVersion.CURRENT + "\"";
        String major = root.namespace().substring(kind.namespaceBase().length());
        Optional<FormatVersion> namespace = FormatVersion.parse(major + ".0");
        if (namespace.isEmpty()) {
            faults.at(tag, null, "unknown namespace " + root.namespace(), kind.rootClass().getEPackage().getNsURI());
            return null;
        }
        if (root.format() == null) {
            if (namespace.get().major() == FormatVersion.CURRENT.major()) {
                faults.at(tag, null, "the root element has no format version", current);
                return new Preamble(kind, List.of());
            }
            return stepsFrom(kind, namespace.get(), tag, migration, faults);
        }
        Optional<FormatVersion> format = FormatVersion.parse(root.format());
        if (format.isEmpty() || format.get().major() != namespace.get().major()) {
            faults.attribute(tag, "format", null, "'" + root.format() + "' is no format version of " + root.namespace(), current);
            return null;
        }
        return stepsFrom(kind, format.get(), tag, migration, faults);
    }

    private static Preamble stepsFrom(FileKind kind, FormatVersion version, int tag, Migration migration, Faults faults) {
        int order = version.compareTo(FormatVersion.CURRENT);
        if (order > 0) {
            faults.attribute(tag, "format", null, "the file is newer than this program: version " + version,
                    "version " + FormatVersion.CURRENT + " or older; use a newer program");
            return null;
        }
        Optional<List<Migration.Step>> steps = migration.way(version);
        if (steps.isEmpty()) {
            faults.attribute(tag, "format", null, "version " + version + " cannot be brought to version "
                    + FormatVersion.CURRENT, "format=\"" + FormatVersion.CURRENT + "\"");
            return null;
        }
        return new Preamble(kind, steps.get());
    }

    private static boolean isUtf8(String name) {
        return name.equalsIgnoreCase(StandardCharsets.UTF_8.name()) || name.equalsIgnoreCase("UTF8")
                || name.equalsIgnoreCase(StandardCharsets.US_ASCII.name());
    }

    /** Place of a DOCTYPE before the root; -1 when there is none. */
    private static int doctype(String text) {
        int at = 0;
        while ((at = text.indexOf('<', at)) >= 0) {
            if (text.startsWith("<!--", at)) {
                at = text.indexOf("-->", at + 4);
            } else if (text.startsWith("<?", at)) {
                at = text.indexOf("?>", at + 2);
            } else {
                return text.startsWith("<!DOCTYPE", at) ? at : -1;
            }
            if (at < 0) {
                return -1;
            }
        }
        return -1;
    }
}
