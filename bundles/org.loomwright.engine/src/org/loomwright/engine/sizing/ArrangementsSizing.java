// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.sizing.SizingResult.SizedCable;
import org.loomwright.engine.sizing.SizingResult.SizedProtector;

/**
 * Arrangements of one vehicle, sized so that all can be built: each is sized on its own; where they want different sections or
 * ratings for what they share, it takes the largest that any of them wants, and each is sized again around it.
 */
public final class ArrangementsSizing {
    private ArrangementsSizing() {
    }

    /** What is shared takes this figure, mm2 or A, which an arrangement wants for a reason. */
    private record Wanted(double figure, String arrangement, Constraint limiting, String why) {
    }

    /** A result for each arrangement, in their order. */
    public static List<SizingResult> run(List<AssemblyResult> arrangements, SizingOptions options, Monitor monitor) {
        boolean several = arrangements.size() > 1;
        List<SizingResult> alone = new ArrayList<>();
        for (AssemblyResult each : arrangements) {
            alone.add(SizingStudy.run(each, several ? options.withoutSensitivity() : options, monitor));
        }
        if (!several) {
            return alone;
        }
        Map<String, Wanted> shared = shared(alone);
        Map<String, Double> settled = new TreeMap<>(options.given());
        shared.forEach((id, wanted) -> settled.put(id, wanted.figure()));
        List<SizingResult> results = new ArrayList<>();
        for (int i = 0; i < arrangements.size(); i++) {
            boolean asIs = shared.isEmpty() && !options.sensitivity();
            SizingResult again = asIs ? alone.get(i) : SizingStudy.run(arrangements.get(i), options.with(settled), monitor);
            results.add(again.withCables(again.cables().stream()
                    .map(cable -> explained(cable, shared.get(cable.id()))).toList()));
        }
        return results;
    }

    /** What several arrangements have, and do not want alike. */
    private static Map<String, Wanted> shared(List<SizingResult> alone) {
        Map<String, List<Wanted>> all = new LinkedHashMap<>();
        for (SizingResult result : alone) {
            String name = result.plan().arrangement();
            for (SizedCable cable : result.cables()) {
                all.computeIfAbsent(cable.id(), id -> new ArrayList<>())
                        .add(new Wanted(cable.afterMm2(), name, cable.limiting(), cable.why()));
            }
            for (SizedProtector each : result.protectors()) {
                all.computeIfAbsent(each.way(), id -> new ArrayList<>())
                        .add(new Wanted(each.afterA(), name, each.limiting(), each.why()));
            }
        }
        Map<String, Wanted> shared = new LinkedHashMap<>();
        all.forEach((id, wanted) -> {
            Wanted most = wanted.get(0);
            boolean alike = true;
            for (Wanted each : wanted) {
                alike &= each.figure() == most.figure();
                most = each.figure() > most.figure() ? each : most;
            }
            if (!alike) {
                shared.put(id, most);
            }
        });
        return shared;
    }

    /** A shared cable has the reasons of the arrangement that wants most. */
    private static SizedCable explained(SizedCable cable, Wanted wanted) {
        return wanted == null ? cable : new SizedCable(cable.id(), cable.part(), cable.lengthMm(), cable.currentA(),
                cable.currentCase(), cable.beforeMm2(), cable.afterMm2(), cable.dropV(), cable.hotC(), wanted.limiting(),
                "shared; " + wanted.arrangement() + " wants it: " + wanted.why(), cable.protector(), cable.derivations());
    }
}
