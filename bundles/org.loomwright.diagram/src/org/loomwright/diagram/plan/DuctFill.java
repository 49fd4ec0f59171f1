// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.parts.DuctPart;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Duct;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/**
 * How full the ducts are: cross sections of the cables over their insulation, as a share of the duct's inner cross section.
 *
 * @param byRun for each run with a duct, what is known of its fullest duct; runs without an entry are open
 */
record DuctFill(Map<Integer, Filled> byRun) {
    DuctFill {
        byRun = new TreeMap<>(byRun);
    }

    /**
     * A duct along a run.
     *
     * @param duct  id
     * @param name  name
     * @param share filled share, 0 to 1 and beyond; NaN where the part states no inner size or a cable no diameter
     */
    record Filled(String duct, String name, double share) {
        boolean known() {
            return !Double.isNaN(share);
        }

        /** For labels: whole per cent. */
        String words() {
            return share == 0 ? "empty" : known() ? StrictMath.round(share * 100) + " %" : "fill not known";
        }
    }

    static DuctFill of(Vehicle vehicle, Arrangement arrangement, PlanContent content) {
        Map<String, Integer> runs = new LinkedHashMap<>();
        for (int r = 0; r < content.runs().size(); r++) {
            runs.put(content.runs().get(r).id(), r);
        }
        List<Duct> ducts = new ArrayList<>(vehicle.getDucts());
        if (arrangement != null) {
            ducts.addAll(arrangement.getDucts());
        }
        Map<Integer, Filled> byRun = new TreeMap<>();
        for (Duct duct : ducts) {
            String id = Fragments.of(duct);
            double inner = innerMm2(duct.getPart());
            for (Run run : duct.getRuns()) {
                Integer at = runs.get(Fragments.of(run));
                if (at != null) {
                    Filled filled = new Filled(id, duct.getName(), takenMm2(content, at, id) / inner);
                    byRun.merge(at, filled, (a, b) -> b.share() > a.share() || !b.known() ? b : a);
                }
            }
        }
        return new DuctFill(byRun);
    }

    private static double takenMm2(PlanContent content, int run, String duct) {
        double taken = 0;
        for (PlanContent.Cable cable : content.cables()) {
            for (int i = 0; i < cable.path().size(); i++) {
                if (cable.path().get(i) == run && i < cable.ducts().size() && cable.ducts().get(i).equals(duct)) {
                    taken += cable.areaMm2();
                }
            }
        }
        return taken;
    }

    private static double innerMm2(DuctPart part) {
        if (part != null && part.getInnerDiameterMm() != null) {
            double d = part.getInnerDiameterMm().doubleValue();
            return StrictMath.PI / 4 * d * d;
        }
        if (part != null && part.getInnerWidthMm() != null && part.getInnerHeightMm() != null) {
            return part.getInnerWidthMm().doubleValue() * part.getInnerHeightMm().doubleValue();
        }
        return Double.NaN;
    }
}
