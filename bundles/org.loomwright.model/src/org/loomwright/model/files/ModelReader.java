// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Makes objects of elements as the parser comes to them; goes on after a fault, so that all faults are found at once. */
final class ModelReader extends DefaultHandler {
    private static final String XMI = "http://www.omg.org/XMI";
    private static final String XSI = "http://www.w3.org/2001/XMLSchema-instance";

    private final FileKind kind;
    private final TagPositions positions;
    private final Faults faults;
    private final AttributeReader attributes;
    private final Deque<EObject> open = new ArrayDeque<>();
    private final Map<EObject, Integer> tags = new IdentityHashMap<>();
    private final List<PendingReference> references = new ArrayList<>();
    private final Map<String, String> rootAttributes = new LinkedHashMap<>();
    private String rootTag;
    private EObject root;
    private int unknownDepth;
    private int lastTag;
    private boolean textReported;

    ModelReader(FileKind kind, TagPositions positions, Faults faults) {
        this.kind = kind;
        this.positions = positions;
        this.faults = faults;
        this.attributes = new AttributeReader(faults);
    }

    /** The root; null before its tag was read. */
    EObject root() {
        return root;
    }

    String rootTag() {
        return rootTag;
    }

    Map<String, String> rootAttributes() {
        return rootAttributes;
    }

    /** References in order of appearance. */
    List<PendingReference> references() {
        return references;
    }

    /** Place of each element's start tag in the text. */
    Map<EObject, Integer> tags() {
        return tags;
    }

    /** The innermost element begun and not ended; null when there is none. */
    EObject openElement() {
        return open.peek();
    }

    /** Place of the last start tag read. */
    int lastTag() {
        return lastTag;
    }

    @Override
    public void startElement(String uri, String localName, String qName, Attributes written) {
        lastTag = positions.next();
        textReported = false;
        if (unknownDepth > 0) {
            unknownDepth++;
            return;
        }
        EObject object = root == null ? startRoot(qName) : startChild(uri, localName, qName, written);
        if (object == null) {
            unknownDepth = 1;
            return;
        }
        open.push(object);
        tags.put(object, lastTag);
        attributes(object, written);
    }

    private EObject startRoot(String qName) {
        rootTag = qName;
        root = EcoreUtil.create(kind.rootClass());
        return root;
    }

    private EObject startChild(String uri, String localName, String qName, Attributes written) {
        EObject parent = open.peek();
        EClass eClass = parent.eClass();
        EStructuralFeature feature = eClass.getEStructuralFeature(localName);
        boolean namespaceFits = uri.isEmpty() || uri.equals(kind.rootClass().getEPackage().getNsURI());
        if (feature instanceof EReference reference && reference.isContainment() && !reference.isTransient() && namespaceFits) {
            EObject child = EcoreUtil.create(reference.getEReferenceType());
            nameFirst(child, written);
            add(parent, reference, child);
            return child;
        }
        if (feature != null && !feature.isTransient() && namespaceFits) {
            faults.at(lastTag, parent, "'" + localName + "' is written as an element",
                    "an attribute " + localName + "=\"...\" of the " + ElementPath.kind(eClass));
        } else {
            List<String> known = eClass.getEAllContainments().stream().filter(f -> !f.isTransient())
                    .map(EStructuralFeature::getName).toList();
            faults.at(lastTag, parent, "unknown element '" + qName + "' in " + ElementPath.aKind(eClass),
                    Expected.oneOf(localName, known, "no elements inside"));
        }
        return null;
    }

    /** Lets faults in the other attributes name the element. */
    private static void nameFirst(EObject child, Attributes written) {
        EStructuralFeature name = child.eClass().getEStructuralFeature("name");
        String value = name == null ? null : written.getValue("", "name");
        if (value != null) {
            child.eSet(name, value);
        }
    }

    @SuppressWarnings("unchecked")
    private void add(EObject parent, EReference reference, EObject child) {
        if (reference.isMany()) {
            ((InternalEList<EObject>) parent.eGet(reference)).addUnique(child);
        } else if (parent.eGet(reference) == null) {
            parent.eSet(reference, child);
        } else {
            faults.at(lastTag, parent, "a second '" + reference.getName() + "' in one " + ElementPath.kind(parent.eClass()),
                    "one at most");
        }
    }

    private void attributes(EObject object, Attributes written) {
        for (int i = 0; i < written.getLength(); i++) {
            String qName = written.getQName(i);
            String uri = written.getURI(i);
            if (qName.equals("xmlns") || qName.startsWith("xmlns:") || object == root && (uri.equals(XMI) || uri.equals(XSI))) {
                if (object == root) {
                    rootAttributes.put(qName, written.getValue(i));
                }
                continue;
            }
            EStructuralFeature feature = uri.isEmpty() ? object.eClass().getEStructuralFeature(written.getLocalName(i)) : null;
            if (feature instanceof EAttribute attribute && !feature.isTransient()) {
                attributes.read(object, attribute, written.getValue(i), lastTag);
            } else if (feature instanceof EReference reference && !reference.isContainment() && !reference.isTransient()) {
                references.add(new PendingReference(object, reference, written.getValue(i), lastTag));
            } else {
                unknownAttribute(object, qName, feature);
            }
        }
    }

    private void unknownAttribute(EObject object, String qName, EStructuralFeature feature) {
        int offset = faults.place(lastTag, qName);
        if (feature != null && !feature.isTransient()) {
            faults.at(offset, object, "'" + qName + "' is written as an attribute",
                    "elements <" + qName + " .../> inside the " + ElementPath.kind(object.eClass()));
            return;
        }
        List<String> known = object.eClass().getEAllStructuralFeatures().stream().filter(f -> !f.isTransient()
                && !(f instanceof EReference reference && reference.isContainment())).map(EStructuralFeature::getName).toList();
        faults.at(offset, object, "unknown attribute '" + qName + "' of " + ElementPath.aKind(object.eClass()),
                Expected.oneOf(qName, known, "no attributes"));
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        if (textReported || unknownDepth > 0) {
            return;
        }
        for (int i = start; i < start + length; i++) {
            if (characters[i] > ' ') {
                textReported = true;
                faults.at(lastTag, open.peek(), "text '" + new String(characters, i, Math.min(20, start + length - i)).strip()
                        + "' between elements", "elements and white space only; remarks go into the attribute note");
                return;
            }
        }
    }

    @Override
    public void endElement(String uri, String localName, String qName) {
        if (unknownDepth > 0) {
            unknownDepth--;
        } else {
            open.pop();
        }
    }
}
