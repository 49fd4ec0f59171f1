// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.LinkedHashMap;
import java.util.List;
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
    private final Map<List<String>, String> cores = new LinkedHashMap<>();
    private final Map<String, Double> warmest = new LinkedHashMap<>();

    /** @param view figures of the case that is drawn; null for none */
    StudiedFigures(StudyView study, CaseView view) {
        this.study = study;
        this.view = view;
        for (Plan.Cable cable : study.plan().cables()) {
            lengths.put(cable.id(), cable.lengthMm());
        }
        for (Plan.Conductor core : study.plan().conductors()) {
            String cable = study.plan().cables().get(core.cable()).id();
            cores.put(List.of(cable, study.plan().terminals().get(core.a()).id(), study.plan().terminals().get(core.b()).id()),
                    core.id());
            CaseView.Conductor figures = live() ? view.conductors().get(core.id()) : null;
            if (figures != null && !Double.isNaN(figures.temperatureC())) {
                warmest.merge(cable, figures.temperatureC(), StrictMath::max);
            }
        }
    }

    @Override
    public boolean live() {
        return view != null && view.settled();
    }

    @Override
    public boolean studied() {
        return true;
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
    public OptionalDouble cableC(String cableId) {
        return of(warmest.get(cableId));
    }

    @Override
    public OptionalDouble wireA(Wire wire) {
        String core = cores.get(List.of(wire.cableId(), wire.a(), wire.b()));
        CaseView.Conductor figures = core != null && live() ? view.conductors().get(core) : null;
        return figures == null ? OptionalDouble.empty() : of(figures.amps());
    }

    @Override
    public OptionalDouble sourceA(String deviceId) {
        return live() ? of(view.sources().get(deviceId)) : OptionalDouble.empty();
    }

    @Override
    public boolean loadOn(String loadId) {
        return load(loadId) != null;
    }

    @Override
    public double waitingA(String deviceId) {
        return !live() ? 0 : view.waiting().entrySet().stream()
                .filter(load -> load.getKey().equals(deviceId) || load.getKey().startsWith(deviceId + "#"))
                .mapToDouble(Map.Entry::getValue).sum();
    }

    @Override
    public boolean closed(String contactId) {
        return live() && view.closed().contains(contactId);
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

    /** Of a load, or all loads of a device together: the least voltage, the sum of currents, the largest drop. */
    private CaseView.Load load(String id) {
        if (!live()) {
            return null;
        }
        CaseView.Load own = view.loads().get(id);
        return own != null ? own : view.loads().entrySet().stream().filter(load -> load.getKey().startsWith(id + "#"))
                .sorted(Map.Entry.comparingByKey()).map(Map.Entry::getValue).reduce(StudiedFigures::together).orElse(null);
    }

    private static CaseView.Load together(CaseView.Load a, CaseView.Load b) {
        CaseView.Load worse = b.dropShare() > a.dropShare() ? b : a;
        return new CaseView.Load(StrictMath.min(a.volts(), b.volts()), a.amps() + b.amps(), worse.dropV(), worse.dropShare(),
                worse.limit());
    }

    private static OptionalDouble of(Double value) {
        return value == null || value.isNaN() ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
