// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.List;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Reads the values of attributes. */
final class AttributeReader {
    private final Faults faults;

    AttributeReader(Faults faults) {
        this.faults = faults;
    }

    /** Sets an attribute, or reports why its text is no value of it. */
    void read(EObject object, EAttribute attribute, String text, int tag) {
        if (attribute.getEAttributeType() instanceof EEnum choices) {
            EEnumLiteral literal = choices.getEEnumLiteralByLiteral(text);
            if (literal != null) {
                object.eSet(attribute, literal.getInstance());
            } else {
                List<String> known = choices.getELiterals().stream().map(EEnumLiteral::getLiteral).toList();
                faults.attribute(tag, attribute.getName(), object, "'" + shortened(text) + "' is not one of the words for it",
                        Expected.oneOf(text, known, ""));
            }
            return;
        }
        try {
            object.eSet(attribute, EcoreUtil.createFromString(attribute.getEAttributeType(), text));
        } catch (RuntimeException e) {
            faults.attribute(tag, attribute.getName(), object, message(e, text), null);
        }
    }

    /** The value types say themselves what they expect; generated code may wrap what they throw. */
    private static String message(RuntimeException e, String text) {
        Throwable cause = e;
        while (cause.getCause() != null && !(cause instanceof IllegalArgumentException)) {
            cause = cause.getCause();
        }
        return cause.getMessage() == null ? "'" + shortened(text) + "' is no value of it" : cause.getMessage();
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 37) + "...";
    }
}
