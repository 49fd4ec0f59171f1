// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.parts.PartsPackage;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Duct;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehiclePackage;

/**
 * The deletion of an element with what makes no sense without it: first planned, so that a person can be told, then applied.
 * Cables go when none of their connected cores keeps both ends; of other cables only the ends are loosened. Runs go with
 * their places, earth points with their bodies, bonds with their earth points, states and placements with their devices,
 * waivers and items of sheets with their elements. Everything else that refers to what is deleted merely lets go of it.
 */
public final class Deletion {
    private static final Set<EReference> HOLDING = Set.of(
            VehiclePackage.Literals.PLACEMENT__DEVICE, VehiclePackage.Literals.PLACEMENT__PLACE,
            VehiclePackage.Literals.RETURN__DEVICE, VehiclePackage.Literals.BATTERY_STATE__DEVICE,
            VehiclePackage.Literals.SWITCH_POSITION__DEVICE, VehiclePackage.Literals.DEMAND_STATE__DEVICE,
            VehiclePackage.Literals.ZONE_AMBIENT__ZONE, VehiclePackage.Literals.DAY_STEP__CASE,
            VehiclePackage.Literals.READING__A, VehiclePackage.Literals.READING__B,
            VehiclePackage.Literals.READING_SET__ARRANGEMENT, VehiclePackage.Literals.SHEET__ARRANGEMENT,
            VehiclePackage.Literals.RUN__FROM, VehiclePackage.Literals.RUN__TO, VehiclePackage.Literals.PASSAGE__RUN,
            VehiclePackage.Literals.BODY_LINK__A, VehiclePackage.Literals.BODY_LINK__B,
            VehiclePackage.Literals.EARTH_POINT__BODY, VehiclePackage.Literals.BOND__A, VehiclePackage.Literals.BOND__B,
            PartsPackage.Literals.ELEMENT__A, PartsPackage.Literals.ELEMENT__B, PartsPackage.Literals.WAY_SPEC__FROM,
            PartsPackage.Literals.WAY_SPEC__OUT);

    private record Use(EObject user, EReference reference) {
    }

    private final Set<EObject> roots = new LinkedHashSet<>();
    private final Map<EObject, Boolean> doomed = new IdentityHashMap<>();
    private final Map<EObject, List<Use>> uses = new IdentityHashMap<>();
    private final Map<EObject, List<EObject>> mentionedBy = new IdentityHashMap<>();
    private final Deque<EObject> open = new ArrayDeque<>();
    private final FragmentTexts texts;

    private Deletion(Collection<? extends EObject> elements) {
        EObject first = elements.iterator().next();
        texts = FragmentTexts.of(first);
        texts.mentions().forEach(mention ->
                mentionedBy.computeIfAbsent(mention.target(), t -> new ArrayList<>()).add(mention.holder()));
        collectUses(EcoreUtil.getRootContainer(first));
        elements.forEach(this::doom);
        while (!open.isEmpty()) {
            follow(open.pop());
        }
    }

    /**
     * Plans the deletion of an element; nothing is changed yet.
     *
     * @throws IllegalArgumentException when it is the root of a file, or used by another open file
     */
    public static Deletion of(EObject element) {
        return of(List.of(element));
    }

    /**
     * Plans the deletion of several elements of one file together; nothing is changed yet.
     *
     * @throws IllegalArgumentException when there is none, one is the root of a file, is named by its device's part, or is used
     *                                  by
     *                                  another open file
     */
    public static Deletion of(Collection<? extends EObject> elements) {
        if (elements.isEmpty()) {
            throw new IllegalArgumentException("nothing to delete");
        }
        EObject root = EcoreUtil.getRootContainer(elements.iterator().next());
        for (EObject element : elements) {
            if (element.eContainer() == null) {
                throw new IllegalArgumentException("the " + ElementPath.of(element) + " is the whole file and cannot be deleted");
            }
            if (element instanceof Terminal) {
                throw new IllegalArgumentException("the " + ElementPath.of(element) + " belongs to the device's part");
            }
            if (EcoreUtil.getRootContainer(element) != root) {
                throw new IllegalArgumentException("the " + ElementPath.of(element) + " is in another file");
            }
        }
        Deletion deletion = new Deletion(elements);
        elements.forEach(deletion::refuseUseByOtherFiles);
        return deletion;
    }

    /** All elements that go, those asked for first; what they contain goes with them and is not listed. */
    public List<EObject> removed() {
        return roots.stream().filter(element -> !within(element.eContainer())).toList();
    }

    /** Applies the plan; the model must not have changed since it was made. */
    public void apply() {
        List<EObject> removed = removed();
        for (EObject target : List.copyOf(targetsInOrder())) {
            for (Use use : uses.getOrDefault(target, List.of())) {
                if (!within(use.user())) {
                    letGo(use.user(), use.reference(), target);
                }
            }
        }
        removed.forEach(EcoreUtil::remove);
        texts.rewrite();
    }

    private List<EObject> targetsInOrder() {
        List<EObject> targets = new ArrayList<>();
        for (EObject element : removed()) {
            targets.add(element);
            element.eAllContents().forEachRemaining(targets::add);
        }
        return targets;
    }

    private void collectUses(EObject root) {
        for (Iterator<EObject> all = root.eAllContents(); all.hasNext();) {
            collect(all.next());
        }
        collect(root);
    }

    private void collect(EObject user) {
        for (EReference reference : user.eClass().getEAllReferences()) {
            if (!reference.isContainment() && !reference.isContainer() && user.eIsSet(reference)) {
                Object value = user.eGet(reference);
                for (Object target : reference.isMany() ? (Collection<?>) value : List.of(value)) {
                    uses.computeIfAbsent((EObject) target, t -> new ArrayList<>()).add(new Use(user, reference));
                }
            }
        }
    }

    private void doom(EObject element) {
        if (!within(element)) {
            roots.add(element);
            mark(element);
            element.eAllContents().forEachRemaining(this::mark);
        }
    }

    private void mark(EObject element) {
        doomed.put(element, Boolean.TRUE);
        open.add(element);
    }

    private boolean within(EObject element) {
        return element != null && doomed.containsKey(element);
    }

    private void follow(EObject target) {
        for (Use use : uses.getOrDefault(target, List.of())) {
            if (HOLDING.contains(use.reference())) {
                doom(use.user());
            } else if (use.user() instanceof Core core && core.eContainer() instanceof Cable cable && isLoose(cable)) {
                doom(cable);
            } else if (use.user() instanceof Duct duct && use.reference() == VehiclePackage.Literals.DUCT__RUNS
                    && duct.getRuns().stream().allMatch(this::within)) {
                doom(duct);
            }
        }
        mentionedBy.getOrDefault(target, List.of()).forEach(this::doom);
    }

    /** True when no connected core of a cable would keep both its ends. */
    private boolean isLoose(Cable cable) {
        return cable.getCores().stream().noneMatch(core -> core.getA() != null && core.getB() != null
                && !within(core.getA()) && !within(core.getB()));
    }

    private void letGo(EObject user, EReference reference, EObject target) {
        if (reference == VehiclePackage.Literals.CABLE__PATH) {
            user.eUnset(reference);
            unset(user, VehiclePackage.Literals.CABLE__PATH_BY);
            return;
        }
        if (reference.isMany()) {
            ((Collection<?>) user.eGet(reference)).remove(target);
        } else {
            user.eUnset(reference);
        }
        if (reference == VehiclePackage.Literals.DEVICE__RUN) {
            unset(user, VehiclePackage.Literals.DEVICE__AT_MM);
        } else if (reference == VehiclePackage.Literals.CORE__A) {
            unset(user, VehiclePackage.Literals.CORE__AEND);
            unset(user, VehiclePackage.Literals.CORE__AORDER);
        } else if (reference == VehiclePackage.Literals.CORE__B) {
            unset(user, VehiclePackage.Literals.CORE__BEND);
            unset(user, VehiclePackage.Literals.CORE__BORDER);
        }
    }

    private static void unset(EObject user, EStructuralFeature feature) {
        if (user.eIsSet(feature)) {
            user.eUnset(feature);
        }
    }

    /** Only libraries, practices and stocks are used by other files. */
    private void refuseUseByOtherFiles(EObject element) {
        Resource own = element.eResource();
        if (own == null || own.getResourceSet() == null || EcoreUtil.getRootContainer(element) instanceof Vehicle) {
            return;
        }
        EcoreUtil.UsageCrossReferencer.findAll(doomed.keySet(), own.getResourceSet()).values().stream()
                .flatMap(Collection::stream)
                .map(EStructuralFeature.Setting::getEObject).filter(user -> user.eResource() != own).map(ElementPath::of)
                .sorted().findFirst().ifPresent(user -> {
                    throw new IllegalArgumentException("the " + ElementPath.of(element) + " is used by the " + user);
                });
    }
}
