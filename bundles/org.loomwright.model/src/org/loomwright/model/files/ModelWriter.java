// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.io.BufferedWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Writes one file: attributes and then children in the order of the metamodel, two blanks for each level, one line for each
 * tag however long. What surrounds the root element stays as it was read.
 */
final class ModelWriter {
    private final VehicleResource resource;
    private final FileForm form;
    private final ReferenceText references;
    private final Map<EClass, List<EStructuralFeature>> attributes = new IdentityHashMap<>();
    private final Map<EClass, List<EReference>> children = new IdentityHashMap<>();

    ModelWriter(VehicleResource resource) {
        this.resource = resource;
        this.form = resource.form();
        this.references = new ReferenceText(resource);
    }

    byte[] bytes() throws IOException {
        if (resource.root() == null) {
            throw new RefusedFileException("is not saved: there is nothing in it", null);
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Writer out = new BufferedWriter(new OutputStreamWriter(bytes, StandardCharsets.UTF_8), 1 << 16)) {
            out.write(form == null ? "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                    : (form.byteOrderMark() ? "\uFEFF" : "") + form.prolog());
            element(out, resource.root(), rootTag(), 0);
            out.write(form == null ? "\n" : form.epilog());
        }
        return bytes.toByteArray();
    }

    private String rootTag() throws IOException {
        return form != null ? form.rootTag() : FileKind.of(resource.root())
                .orElseThrow(() -> new RefusedFileException("is not saved: its root is not that of a file", null)).rootTag();
    }

    private Map<String, String> rootAttributes() {
        if (form != null) {
            return form.rootAttributes();
        }
        EClass eClass = resource.root().eClass();
        Map<String, String> written = new java.util.LinkedHashMap<>();
        written.put("xmi:version", "2.0");
        written.put("xmlns:xmi", "http://www.omg.org/XMI");
        written.put("xmlns:" + eClass.getEPackage().getNsPrefix(), eClass.getEPackage().getNsURI());
        return written;
    }

    private void element(Writer out, EObject object, String tag, int depth) throws IOException {
        out.write('<');
        out.write(tag);
        if (depth == 0) {
            for (Map.Entry<String, String> entry : rootAttributes().entrySet()) {
                attribute(out, entry.getKey(), entry.getValue(), object);
            }
        }
        for (EStructuralFeature feature : attributes(object.eClass())) {
            if (object.eIsSet(feature)) {
                String value = feature instanceof EReference reference ? references.of(object, reference)
                        : EcoreUtil.convertToString(((EAttribute) feature).getEAttributeType(), object.eGet(feature));
                if (value != null) {
                    attribute(out, feature.getName(), value, object);
                }
            }
        }
        boolean open = false;
        for (EReference reference : children(object.eClass())) {
            for (EObject child : NameResolver.targets(object, reference)) {
                if (!open) {
                    out.write('>');
                    open = true;
                }
                newLine(out, depth + 1);
                element(out, child, reference.getName(), depth + 1);
            }
        }
        if (open) {
            newLine(out, depth);
            out.write("</");
            out.write(tag);
            out.write('>');
        } else {
            out.write("/>");
        }
    }

    private void newLine(Writer out, int depth) throws IOException {
        out.write(form == null ? "\n" : form.lineEnd());
        for (int i = 0; i < depth; i++) {
            out.write("  ");
        }
    }

    private static void attribute(Writer out, String name, String value, EObject object) throws IOException {
        out.write(' ');
        out.write(name);
        out.write("=\"");
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            switch (c) {
                case '&' -> out.write("&amp;");
                case '<' -> out.write("&lt;");
                case '"' -> out.write("&quot;");
                case '\n' -> out.write("&#xA;");
                case '\r' -> out.write("&#xD;");
                case '\t' -> out.write("&#x9;");
                default -> {
                    if (!isText(value, i)) {
                        throw new RefusedFileException("is not saved: " + ElementPath.of(object) + ": " + name
                                + " has a control character that a file cannot hold", null);
                    }
                    out.write(c);
                }
            }
        }
        out.write('"');
    }

    /** True for characters that XML 1.0 permits. */
    private static boolean isText(String value, int at) {
        char c = value.charAt(at);
        if (Character.isHighSurrogate(c)) {
            return at + 1 < value.length() && Character.isLowSurrogate(value.charAt(at + 1));
        }
        if (Character.isLowSurrogate(c)) {
            return at > 0 && Character.isHighSurrogate(value.charAt(at - 1));
        }
        return c >= ' ' && c < 0xFFFE;
    }

    private List<EStructuralFeature> attributes(EClass eClass) {
        return attributes.computeIfAbsent(eClass, known -> {
            List<EStructuralFeature> features = new ArrayList<>();
            for (EStructuralFeature feature : known.getEAllStructuralFeatures()) {
                boolean containment = feature instanceof EReference reference && reference.isContainment();
                if (!feature.isTransient() && !containment) {
                    features.add(feature);
                }
            }
            return features;
        });
    }

    private List<EReference> children(EClass eClass) {
        return children.computeIfAbsent(eClass,
                known -> known.getEAllContainments().stream().filter(reference -> !reference.isTransient()).toList());
    }
}
