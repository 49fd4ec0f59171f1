// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.loomwright.model.parts.Named;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehiclePackage;

/** Random vehicles over the whole metamodel: every class, attribute and reference, names that occur in several scopes. */
public final class RandomVehicles {
    private static final String[] TEXTS = {"plain", "a <b> & \"c\" 'd'", "tab\tline\nline\r\nend",
        "\u00FCber \u4E2D \uD83D\uDE9A", " ", ""};

    private final Random random;
    private final PartsLibrary library;
    private int serial;

    /** Vehicles by this seed that use parts of this library. */
    public RandomVehicles(long seed, PartsLibrary library) {
        this.random = new Random(seed);
        this.library = library;
    }

    /** Fills an empty vehicle: first the elements, then references among them. */
    public void fill(Vehicle vehicle) {
        vehicle.setFormat("1.0");
        grow(vehicle, 0);
        vehicle.eAllContents().forEachRemaining(this::refer);
        refer(vehicle);
    }

    private void grow(EObject object, int depth) {
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            if (random.nextInt(3) > 0 && !attribute.getName().equals("format") && !attribute.getName().equals("name")) {
                object.eSet(attribute, value(attribute.getEAttributeType()));
            }
        }
        if (object instanceof Named named) {
            named.setName(name(object));
        }
        for (EReference containment : object.eClass().getEAllContainments()) {
            if (!containment.isTransient() && depth < 4) {
                int count = random.nextInt(depth == 0 ? 5 : 4);
                for (int i = 0; i < count; i++) {
                    EObject child = EcoreUtil.create(containment.getEReferenceType());
                    add(object, containment, child);
                    grow(child, depth + 1);
                }
            }
        }
    }

    @SuppressWarnings("unchecked")
    private static void add(EObject object, EReference reference, EObject value) {
        ((List<EObject>) object.eGet(reference)).add(value);
    }

    /** Short names, so that arrangements share them and hide those of the vehicle; unique in their container. */
    private String name(EObject object) {
        String prefix = object instanceof Device ? "X" : object.eClass().getName().substring(0, 1)
                + (random.nextBoolean() ? "." : "-");
        for (int i = 1;; i++) {
            String name = prefix + i;
            if (object.eContainer() == null
                    || ScopeIndex.children(object.eContainer(), name).stream().allMatch(other -> other == object)) {
                return name;
            }
        }
    }

    private Object value(EDataType type) {
        if (type instanceof EEnum choices) {
            return choices.getELiterals().get(random.nextInt(choices.getELiterals().size())).getInstance();
        }
        Class<?> javaClass = type.getInstanceClass();
        if (javaClass == BigDecimal.class) {
            return BigDecimal.valueOf(random.nextInt(200_000) + 1, random.nextInt(5)).multiply(
                    random.nextInt(4) == 0 ? BigDecimal.ONE.negate() : BigDecimal.ONE);
        }
        if (javaClass == Integer.class) {
            return random.nextInt(1000);
        }
        if (javaClass == Boolean.class) {
            return random.nextBoolean();
        }
        return TEXTS[random.nextInt(TEXTS.length)] + serial++;
    }

    private void refer(EObject object) {
        for (EReference reference : object.eClass().getEAllReferences()) {
            if (reference.isContainment() || FileKind.ofRoot(reference.getEReferenceType()).isPresent()) {
                continue;
            }
            List<EObject> candidates = candidates(object, reference.getEReferenceType());
            if (candidates.isEmpty() || random.nextInt(4) == 0) {
                continue;
            }
            if (reference.isMany()) {
                for (int i = random.nextInt(3); i > 0 && !candidates.isEmpty(); i--) {
                    add(object, reference, candidates.remove(random.nextInt(candidates.size())));
                }
            } else {
                object.eSet(reference, candidates.get(random.nextInt(candidates.size())));
            }
        }
    }

    /** All elements of a type in the vehicle, in other arrangements too, and in the library. */
    private List<EObject> candidates(EObject object, EClass type) {
        List<EObject> candidates = new ArrayList<>();
        for (EObject root : List.of(EcoreUtil.getRootContainer(object), library)) {
            root.eAllContents().forEachRemaining(candidate -> {
                if (type.isInstance(candidate)) {
                    candidates.add(candidate);
                } else if (candidate instanceof Device device && type == VehiclePackage.Literals.ATTACHMENT) {
                    candidates.add(Terminals.of(device, "L+"));
                }
            });
        }
        if (candidates.stream().anyMatch(Arrangement.class::isInstance)) {
            candidates.remove(object);
        }
        return candidates;
    }
}
