// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.EAnnotation;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * What holds for every object of the three metamodels: names, required values, and ranges. Ranges and required values
 * are written in the metamodels, as the annotations {@link #RANGE}, {@link #NAMED} and {@link #REQUIRED} and as lower bounds.
 */
public final class StructureRules {
    /** Annotation of a number: {@code min}, {@code max} (inclusive) and {@code unit}. */
    public static final String RANGE = "http://loomwright.org/range";
    /** Annotation of a class whose inherited name is required. */
    public static final String NAMED = "http://loomwright.org/named";
    /** Annotation of a class whose inherited features of these names are required. */
    public static final String REQUIRED = "http://loomwright.org/required";

    private StructureRules() {
    }

    /** All violations below and including {@code root}, in document order. */
    public static List<Violation> check(EObject root) {
        List<Violation> found = new ArrayList<>();
        check(root, found::add);
        for (Iterator<EObject> all = root.eAllContents(); all.hasNext();) {
            check(all.next(), found::add);
        }
        return found;
    }

    private static void check(EObject object, Consumer<Violation> found) {
        Names.check(object, found);
        EClass type = object.eClass();
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (required(type, feature) && !object.eIsSet(feature)) {
                found.accept(Violation.blocking("required", object, feature.getName(),
                        Names.kind(object) + " has no " + feature.getName(), feature.getName()));
            }
            range(object, feature, found);
        }
    }

    private static boolean required(EClass type, EStructuralFeature feature) {
        if (feature.getLowerBound() > 0) {
            return true;
        }
        if ("name".equals(feature.getName())) {
            return type.getEAnnotation(NAMED) != null;
        }
        EAnnotation annotation = type.getEAnnotation(REQUIRED);
        return annotation != null && annotation.getDetails().containsKey(feature.getName());
    }

    private static void range(EObject object, EStructuralFeature feature, Consumer<Violation> found) {
        EAnnotation range = feature.getEAnnotation(RANGE);
        if (range == null || feature.isMany() || !(object.eGet(feature) instanceof Number number)) {
            return;
        }
        BigDecimal value = number instanceof BigDecimal decimal ? decimal : BigDecimal.valueOf(number.longValue());
        String min = range.getDetails().get("min");
        String max = range.getDetails().get("max");
        if (value.compareTo(new BigDecimal(min)) < 0 || value.compareTo(new BigDecimal(max)) > 0) {
            String unit = EcoreUtil.getAnnotation(feature, RANGE, "unit");
            found.accept(Violation.blocking("range", object, feature.getName(),
                    feature.getName() + " of " + value.toPlainString() + " cannot be meant",
                    min + " to " + max + ("1".equals(unit) ? "" : " " + unit)));
        }
    }
}
