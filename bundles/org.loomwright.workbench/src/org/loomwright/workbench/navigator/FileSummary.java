// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.navigator;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;

/**
 * What the tree shows of a file without opening it as a model.
 *
 * @param label        label of the root; empty when it has none or the file cannot be read
 * @param arrangements arrangements of a vehicle, in the order of the file
 */
record FileSummary(String label, List<ArrangementNode> arrangements) {
    private static final FileSummary NOTHING = new FileSummary("", List.of());

    FileSummary {
        arrangements = List.copyOf(arrangements);
    }

    /** Reads a file; one with faults gives what could be read before the fault. */
    static FileSummary of(IFile file) {
        String label = "";
        List<ArrangementNode> arrangements = new ArrayList<>();
        try (InputStream content = file.getContents(true)) {
            XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
            factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
            factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
            XMLStreamReader reader = factory.createXMLStreamReader(content);
            String adopted = "";
            int depth = 0;
            while (reader.hasNext()) {
                int event = reader.next();
                if (event == XMLStreamConstants.START_ELEMENT) {
                    if (depth == 0) {
                        label = value(reader, "label");
                        adopted = value(reader, "adopted");
                    } else if (depth == 1 && "arrangements".equals(reader.getLocalName())) {
                        String name = value(reader, "name");
                        arrangements.add(new ArrangementNode(file, name, value(reader, "label"), name.equals(adopted)));
                    }
                    depth++;
                } else if (event == XMLStreamConstants.END_ELEMENT) {
                    depth--;
                }
            }
            return new FileSummary(label, arrangements);
        } catch (CoreException | IOException unreadable) {
            return NOTHING;
        } catch (XMLStreamException fault) {
            return new FileSummary(label, arrangements);
        }
    }

    private static String value(XMLStreamReader reader, String attribute) {
        String value = reader.getAttributeValue(null, attribute);
        return value == null ? "" : value;
    }
}
