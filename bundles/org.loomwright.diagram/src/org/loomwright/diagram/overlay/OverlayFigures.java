// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.overlay;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.loomwright.diagram.services.CaseView;
import org.loomwright.diagram.services.StudyView;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;

/**
 * The values of an overlay out of what the engine found. Without a case the worst value of all cases is shown; cases without an
 * operating point say nothing. Devices take the highest value of the fuses in them.
 */
public final class OverlayFigures {
    private final StudyView study;
    private final Map<String, Double> values = new TreeMap<>();

    private OverlayFigures(StudyView study) {
        this.study = study;
    }

    /**
     * The values of an overlay.
     *
     * @param kind     any but {@link OverlayKind#FILL}, which is no matter of cases
     * @param caseName case shown, or null for the worst of all
     */
    public static OverlayValues of(OverlayKind kind, StudyView study, String caseName) {
        OverlayFigures figures = new OverlayFigures(study);
        for (String name : study.caseNames()) {
            CaseView view = caseName == null || caseName.equals(name) ? study.caseView(name) : null;
            if (view != null && view.settled()) {
                figures.add(kind, view);
            }
        }
        double largest = figures.values.values().stream().mapToDouble(value -> value).max().orElse(0);
        return new OverlayValues(OverlayScale.upTo(kind, largest, figures.limits(kind)), figures.values);
    }

    private void add(OverlayKind kind, CaseView view) {
        switch (kind) {
            case VOLTAGE_DROP -> view.conductors().forEach((id, conductor) -> put(id, 1000 * conductor.dropV()));
            case TEMPERATURE -> view.conductors().forEach((id, conductor) -> put(id, conductor.temperatureC()));
            case FUSE_LOAD -> fuses(view);
            case POTENTIAL -> view.bodies().forEach((id, volts) -> put(id, 1000 * StrictMath.abs(volts)));
            case FILL -> throw new IllegalArgumentException("the fill of ducts is no matter of cases");
        }
    }

    private void fuses(CaseView view) {
        Set<String> devices = new LinkedHashSet<>();
        study.plan().devices().forEach(device -> devices.add(device.id()));
        view.protectors().forEach((id, protector) -> {
            double percent = 100 * protector.loadShare();
            put(id, percent);
            int cut = StrictMath.max(id.lastIndexOf('/'), id.lastIndexOf('#'));
            if (cut > 0 && devices.contains(id.substring(0, cut))) {
                put(id.substring(0, cut), percent);
            }
        });
    }

    /** The drop is limited over whole loops and over straps, so neither a conductor nor a body has a limit of its own. */
    private List<Double> limits(OverlayKind kind) {
        if (kind == OverlayKind.FUSE_LOAD) {
            Practice practice = study.plan().practice();
            return List.of(100 * practice.value("device-loading.warning"), 100 * practice.value("device-loading.error"));
        }
        TreeSet<Double> classes = new TreeSet<>();
        if (kind == OverlayKind.TEMPERATURE) {
            study.plan().cables().stream().map(Plan.Cable::maxC).filter(maxC -> !maxC.isNaN()).forEach(classes::add);
        }
        return List.copyOf(classes);
    }

    private void put(String id, double value) {
        if (!Double.isNaN(value)) {
            values.merge(id, value, StrictMath::max);
        }
    }
}
