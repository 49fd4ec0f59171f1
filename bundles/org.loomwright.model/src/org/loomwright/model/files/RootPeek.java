// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.io.StringReader;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The root element, read ahead of the rest.
 *
 * @param namespace namespace of the root; empty when it has none
 * @param name      local name of the root
 * @param format    its format version as written; null when missing
 */
record RootPeek(String namespace, String name, String format) {
    /** Reads the root; null when the text is not well-formed up to there. */
    static RootPeek at(String text) {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, Boolean.FALSE);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, Boolean.FALSE);
        try {
            XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(text));
            while (reader.hasNext()) {
                if (reader.next() == XMLStreamReader.START_ELEMENT) {
                    String namespace = reader.getNamespaceURI();
                    return new RootPeek(namespace == null ? "" : namespace, reader.getLocalName(),
                            reader.getAttributeValue(null, "format"));
                }
            }
            return null;
        } catch (XMLStreamException e) {
            return null;
        }
    }
}
