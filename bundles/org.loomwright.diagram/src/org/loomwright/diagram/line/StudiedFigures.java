// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.loomwright.diagram.services.CaseView;
import org.loomwright.diagram.services.FindingMark;
import org.loomwright.diagram.services.StudyView;
import org.loomwright.diagram.symbol.Badge;
import org.loomwright.engine.assembly.Plan;

/** Figures out of a study. */
final class StudiedFigures implements LineFigures {
    private final StudyView study;
    private final CaseView view;
    private final Map<String, Double> lengths = new LinkedHashMap<>();

    /** @param view figures of the case that is drawn; null for none */
    StudiedFigures(StudyView study, CaseView view) {
        this.study = study;
        this.view = view;
        for (Plan.Cable cable : study.plan().cables()) {
            lengths.put(cable.id(), cable.lengthMm());
        }
    }

    @Override
    public boolean live() {
        return view != null && view.settled();
    }

    @Override
    public OptionalDouble cableA(String cableId) {
        CaseView.Conductor conductor = live() ? view.conductors().get(cableId) : null;
        return conductor == null ? OptionalDouble.empty() : of(StrictMath.abs(conductor.amps()));
    }

    @Override
    public OptionalDouble cableMillivolts(String cableId) {
        CaseView.Conductor conductor = live() ? view.conductors().get(cableId) : null;
        return conductor == null ? OptionalDouble.empty() : of(conductor.dropV() * 1000);
    }

    @Override
    public OptionalDouble lengthMm(String cableId) {
        return of(lengths.get(cableId));
    }

    @Override
    public OptionalDouble terminalV(String terminalId) {
        return live() ? of(view.terminals().get(terminalId)) : OptionalDouble.empty();
    }

    @Override
    public OptionalDouble loadV(String deviceId) {
        CaseView.Load load = load(deviceId);
        return load == null ? OptionalDouble.empty() : of(load.volts());
    }

    @Override
    public OptionalDouble loadA(String deviceId) {
        CaseView.Load load = load(deviceId);
        return load == null ? OptionalDouble.empty() : of(load.amps());
    }

    @Override
    public OptionalDouble loadDropPercent(String deviceId) {
        CaseView.Load load = load(deviceId);
        return load == null ? OptionalDouble.empty() : of(load.dropShare() * 100);
    }

    @Override
    public Badge badge(String elementId) {
        FindingMark mark = mark(elementId);
        return mark == null ? null : mark.badge();
    }

    @Override
    public int count(String elementId) {
        FindingMark mark = mark(elementId);
        return mark == null ? 0 : mark.count();
    }

    private FindingMark mark(String elementId) {
        FindingMark own = study.markWithin(elementId);
        FindingMark cause = study.causeMark(elementId);
        if (own == null) {
            return cause;
        }
        return cause == null || own.badge() == Badge.ERROR || own.badge() == Badge.WARNING ? own : cause;
    }

    private CaseView.Load load(String deviceId) {
        return live() ? view.loads().get(deviceId) : null;
    }

    private static OptionalDouble of(Double value) {
        return value == null || value.isNaN() ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
