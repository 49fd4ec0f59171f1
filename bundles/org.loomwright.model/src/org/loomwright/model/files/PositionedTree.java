// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.ArrayDeque;
import java.util.Deque;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.AttributesImpl;
import org.xml.sax.helpers.DefaultHandler;

/** A file as a tree of XML in which each element knows where it was written, for migration. */
final class PositionedTree extends DefaultHandler implements TagPositions {
    private static final String PLACE = "place";

    private final TagPositions positions;
    private final Document document;
    private final Deque<Node> open = new ArrayDeque<>();
    private int current;

    PositionedTree(TagPositions positions) throws ParserConfigurationException {
        this.positions = positions;
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setNamespaceAware(true);
        document = factory.newDocumentBuilder().newDocument();
        open.push(document);
    }

    Document document() {
        return document;
    }

    @Override
    public void startElement(String uri, String localName, String qName, Attributes attributes) {
        Element element = document.createElementNS(uri.isEmpty() ? null : uri, qName);
        for (int i = 0; i < attributes.getLength(); i++) {
            String name = attributes.getQName(i);
            boolean declaration = name.equals("xmlns") || name.startsWith("xmlns:");
            String space = declaration ? "http://www.w3.org/2000/xmlns/" : attributes.getURI(i);
            element.setAttributeNS(space.isEmpty() ? null : space, name, attributes.getValue(i));
        }
        element.setUserData(PLACE, positions.next(), null);
        open.peek().appendChild(element);
        open.push(element);
    }

    @Override
    public void endElement(String uri, String localName, String qName) {
        open.pop();
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        open.peek().appendChild(document.createTextNode(new String(characters, start, length)));
    }

    /** Hands the tree to a reader as if it were parsed. Elements that a migration made are where their container was. */
    void replay(ModelReader reader) {
        Node node = document.getDocumentElement();
        while (node != null) {
            if (node instanceof Element element) {
                start(reader, element);
            } else if (node.getNodeType() == Node.TEXT_NODE) {
                char[] text = node.getNodeValue().toCharArray();
                reader.characters(text, 0, text.length);
            }
            if (node.getFirstChild() != null) {
                node = node.getFirstChild();
                continue;
            }
            end(reader, node);
            while (node != null && node.getNextSibling() == null) {
                node = node.getParentNode() == document ? null : node.getParentNode();
                end(reader, node);
            }
            node = node == null ? null : node.getNextSibling();
        }
    }

    @Override
    public int next() {
        return current;
    }

    private void start(ModelReader reader, Element element) {
        if (element.getUserData(PLACE) instanceof Integer place) {
            current = place;
        } else {
            element.setUserData(PLACE, current, null);
        }
        AttributesImpl attributes = new AttributesImpl();
        NamedNodeMap map = element.getAttributes();
        for (int i = 0; i < map.getLength(); i++) {
            Attr attribute = (Attr) map.item(i);
            String space = attribute.getNamespaceURI() == null ? "" : attribute.getNamespaceURI();
            String local = attribute.getLocalName() == null ? attribute.getName() : attribute.getLocalName();
            attributes.addAttribute(space, local, attribute.getName(), "CDATA", attribute.getValue());
        }
        String space = element.getNamespaceURI() == null ? "" : element.getNamespaceURI();
        String local = element.getLocalName() == null ? element.getTagName() : element.getLocalName();
        reader.startElement(space, local, element.getTagName(), attributes);
    }

    private static void end(ModelReader reader, Node node) {
        if (node instanceof Element) {
            reader.endElement("", "", "");
        }
    }
}
