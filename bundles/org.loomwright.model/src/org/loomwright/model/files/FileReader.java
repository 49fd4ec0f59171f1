// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.io.IOException;
import java.io.StringReader;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.eclipse.emf.ecore.EObject;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/** Reads one file: text, root, elements, references, in this order. */
final class FileReader {
    private final VehicleResource resource;
    private final Migration migration;
    private SourceText source;
    private Faults faults;
    private Preamble preamble;
    private ModelReader model;
    private FileForm form;
    private List<String> missingFiles = List.of();

    FileReader(VehicleResource resource, Migration migration) {
        this.resource = resource;
        this.migration = migration;
    }

    /** Looks at the beginning of a file; the kind of file, or null when it is none that can be read. */
    FileKind peek(byte[] bytes) {
        source = SourceText.decode(bytes);
        faults = new Faults(resource.getURI() == null ? "" : FilePaths.shown(resource.getURI()), source);
        preamble = Preamble.check(source, migration, faults);
        return preamble == null ? null : preamble.kind();
    }

    /** Reads the elements into the resource and binds their references. */
    void read(WrittenNames writtenNames) throws IOException {
        if (preamble == null) {
            return;
        }
        TagScanner scanner = new TagScanner(source.text());
        boolean whole = preamble.steps().isEmpty() ? readDirectly(scanner) : readMigrated(scanner, preamble.steps());
        if (!whole) {
            return;
        }
        scanner.finish();
        form = new FileForm(source.hasByteOrderMark(), source.lineEnd(), source.text().substring(0, scanner.rootStart()),
                model.rootTag(), model.rootAttributes(), source.text().substring(scanner.lastTagEnd()), scanner.commentInside());
        resource.getContents().add(model.root());
        ReferencePass references = new ReferencePass(resource, faults, writtenNames);
        references.bind(model.references());
        missingFiles = List.copyOf(references.failedFiles());
    }

    /** Other files that could not be read. */
    List<String> missingFiles() {
        return missingFiles;
    }

    List<ReadFault> faults() {
        return faults.listed();
    }

    /** How the file was written; null when it could not be read as a whole. */
    FileForm form() {
        return form;
    }

    /** Where each element was written. */
    Map<EObject, Location> locations() {
        Map<EObject, Location> locations = new IdentityHashMap<>();
        if (form != null) {
            model.tags().forEach((object, tag) -> locations.put(object, source.location(tag)));
        }
        return locations;
    }

    private boolean readDirectly(TagScanner scanner) throws IOException {
        model = new ModelReader(preamble.kind(), scanner, faults);
        return parse(model);
    }

    private boolean readMigrated(TagScanner scanner, List<Migration.Step> steps) throws IOException {
        try {
            PositionedTree tree = new PositionedTree(scanner);
            if (!parse(tree)) {
                return false;
            }
            steps.forEach(step -> step.apply(tree.document()));
            model = new ModelReader(preamble.kind(), tree, faults);
            tree.replay(model);
            return true;
        } catch (ParserConfigurationException e) {
            throw new IOException(e);
        }
    }

    private boolean parse(DefaultHandler handler) throws IOException {
        try {
            SAXParserFactory factory = SAXParserFactory.newDefaultNSInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setFeature("http://xml.org/sax/features/namespace-prefixes", true);
            SAXParser parser = factory.newSAXParser();
            speakEnglish(parser);
            parser.parse(new InputSource(new StringReader(source.text())), handler);
            return true;
        } catch (SAXParseException e) {
            notWellFormed(e);
            return false;
        } catch (ParserConfigurationException | SAXException e) {
            throw new IOException(e);
        }
    }

    /**
     * The messages go between ours. Only the older interface of the parser has a way to say so, and
     * its English texts are those of no language.
     */
    @SuppressWarnings("deprecation")
    private static void speakEnglish(SAXParser parser) throws SAXException {
        parser.getParser().setLocale(Locale.ROOT);
    }

    private void notWellFormed(SAXParseException e) {
        int offset = source.offset(e.getLineNumber(), e.getColumnNumber());
        EObject open = model == null ? null : model.openElement();
        String text = source.text().stripTrailing();
        if (offset >= text.length() || !text.endsWith(">") && text.indexOf('>', offset) < 0) {
            faults.at(offset, open, "the file ends too early" + (open == null ? "" : ": the " + ElementPath.kind(open.eClass())
                    + " begun in line " + source.location(model.tags().get(open)).line() + " is not closed"),
                    "a file that was written to its end");
        } else {
            faults.at(offset, open, "not well-formed XML: " + Optional.ofNullable(e.getMessage()).orElse("unreadable"), null);
        }
    }
}
