// SPDX-License-Identifier: EPL-2.0
package org.loomwright.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.parts.Confidence;
import org.loomwright.model.parts.Part;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.practice.Limit;
import org.loomwright.model.practice.Practice;

/** Every figure of the fleet's libraries and practices says where it comes from and how sure it is. */
class SourcesTest {

    static List<Path> libraries() {
        return Fleet.files("parts");
    }

    private static List<EObject> all(EObject root) {
        List<EObject> all = new ArrayList<>();
        for (Iterator<EObject> each = root.eAllContents(); each.hasNext();) {
            all.add(each.next());
        }
        return all;
    }

    private static PartsLibrary open(Path file) {
        return new VehicleFiles().openParts(file).root();
    }

    private static Object value(EObject object, String feature) {
        EStructuralFeature found = object.eClass().getEStructuralFeature(feature);
        return found == null || !object.eIsSet(found) ? null : object.eGet(found);
    }

    /** Parts, tables and curves: everything that can name its source, but for rows, which may leave it to their part. */
    private static List<EObject> sourced(PartsLibrary library) {
        return all(library).stream().filter(object -> object.eContainer() == library).toList();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    void everyPartAndTableHasItsSourceAndConfidence(Path file) {
        List<EObject> sourced = sourced(open(file));
        assertTrue(sourced.size() > 5, file.toString());
        assertEquals(List.of(), sourced.stream().filter(object -> isBlank(value(object, "source"))).map(ElementPath::of)
                .toList());
        assertEquals(List.of(), sourced.stream().filter(object -> value(object, "confidence") == null).map(ElementPath::of)
                .toList());
    }

    private static boolean isBlank(Object text) {
        return text == null || text.toString().isBlank();
    }

    /** One word stands for a whole part, the least sure one: where something in it was recalled, it is not called better. */
    @ParameterizedTest
    @MethodSource("libraries")
    void recalledFiguresAreMarked(Path file) {
        List<String> wrong = new ArrayList<>();
        for (EObject object : all(open(file))) {
            Object source = value(object, "source");
            Object confidence = value(object, "confidence");
            if (source != null && confidence != null) {
                boolean own = source.toString().contains("recalled");
                boolean within = own || all(object).stream().map(each -> value(each, "source"))
                        .anyMatch(each -> each != null && each.toString().contains("recalled"));
                boolean marked = confidence == Confidence.RECALLED;
                if (own && !marked && confidence != Confidence.INVENTED || marked && !within) {
                    wrong.add(ElementPath.of(object) + " is " + confidence + ", its source: " + source);
                }
            }
        }
        assertEquals("", String.join("\n", wrong));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    void everyPriceSaysWhereItComesFrom(Path file) {
        List<String> wrong = new ArrayList<>();
        for (EObject object : all(open(file))) {
            boolean priced = value(object, "price") != null || value(object, "pricePerM") != null;
            EObject part = object instanceof Part ? object : object.eContainer();
            if (priced && isBlank(value(part, "priceSource"))) {
                wrong.add(ElementPath.of(object));
            }
        }
        assertEquals(List.of(), wrong);
    }

    static List<Path> practices() {
        return Fleet.files("practice");
    }

    @ParameterizedTest
    @MethodSource("practices")
    void everyLimitHasItsSourceAndConfidence(Path file) {
        Practice practice = new VehicleFiles().openPractice(file).root();
        assertTrue(practice.getLimits().size() > 0);
        assertEquals(List.of(), practice.getLimits().stream().filter(SourcesTest::isUnsourced).map(Limit::getName).toList());
    }

    private static boolean isUnsourced(Limit limit) {
        return isBlank(value(limit, "source")) || value(limit, "confidence") == null;
    }
}
