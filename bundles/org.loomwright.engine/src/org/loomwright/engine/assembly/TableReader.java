// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.parts.AmpacityPoint;
import org.loomwright.model.parts.AmpacityTable;
import org.loomwright.model.parts.CountBasis;
import org.loomwright.model.parts.CurvePoint;
import org.loomwright.model.parts.FactorPoint;
import org.loomwright.model.parts.FuseCurve;
import org.loomwright.model.parts.GroupingPoint;
import org.loomwright.model.parts.GroupingTable;

/** Reads the tables of parts, each once. Points that are not complete are left out; the rules of the parts report them. */
final class TableReader {
    private final Map<AmpacityTable, Plan.Ampacity> ampacities = new IdentityHashMap<>();
    private final Map<GroupingTable, Plan.Grouping> groupings = new IdentityHashMap<>();
    private final Map<FuseCurve, Plan.FuseCurve> curves = new IdentityHashMap<>();

    /** The rating table, or null for none. */
    Plan.Ampacity ampacity(AmpacityTable table) {
        return table == null || table.eIsProxy() ? null : ampacities.computeIfAbsent(table, TableReader::read);
    }

    /** The grouping table, or null for none. */
    Plan.Grouping grouping(GroupingTable table) {
        return table == null || table.eIsProxy() ? null : groupings.computeIfAbsent(table, TableReader::read);
    }

    /** The curve, or null for none. */
    Plan.FuseCurve curve(FuseCurve curve) {
        return curve == null || curve.eIsProxy() ? null : curves.computeIfAbsent(curve, TableReader::read);
    }

    private static Plan.Ampacity read(AmpacityTable table) {
        List<AmpacityPoint> points = new ArrayList<>(table.getPoints());
        points.removeIf(p -> p.getSectionMm2() == null || p.getAmps() == null);
        points.sort(Comparator.comparing(AmpacityPoint::getSectionMm2));
        return new Plan.Ampacity(table.getName(), table.getSource(), table.getCounts() == CountBasis.CONDUCTORS,
                table.getLoadedCores() == null ? 0 : table.getLoadedCores(), Decimals.of(table.getReferenceC()),
                Decimals.of(table.getMaxC()), points.stream().map(p -> p.getSectionMm2().doubleValue()).toList(),
                points.stream().map(p -> p.getAmps().doubleValue()).toList());
    }

    private static Plan.Grouping read(GroupingTable table) {
        List<GroupingPoint> points = new ArrayList<>(table.getPoints());
        points.removeIf(p -> p.getUpTo() == null || p.getFactor() == null);
        points.sort(Comparator.comparing(GroupingPoint::getUpTo));
        return new Plan.Grouping(table.getName(), table.getSource(), table.getCounts() == CountBasis.CONDUCTORS,
                points.stream().map(GroupingPoint::getUpTo).toList(),
                points.stream().map(p -> p.getFactor().doubleValue()).toList());
    }

    private static Plan.FuseCurve read(FuseCurve curve) {
        List<CurvePoint> fastest = complete(curve.getFastest());
        List<CurvePoint> slowest = complete(curve.getSlowest());
        List<FactorPoint> factors = new ArrayList<>(curve.getAmbientFactors());
        factors.removeIf(p -> p.getAmbientC() == null || p.getFactor() == null);
        factors.sort(Comparator.comparing(FactorPoint::getAmbientC));
        return new Plan.FuseCurve(curve.getName(), curve.getSource(), multiples(fastest), seconds(fastest),
                multiples(slowest), seconds(slowest), factors.stream().map(p -> p.getAmbientC().doubleValue()).toList(),
                factors.stream().map(p -> p.getFactor().doubleValue()).toList());
    }

    private static List<CurvePoint> complete(List<CurvePoint> stated) {
        List<CurvePoint> points = new ArrayList<>(stated);
        points.removeIf(p -> p.getTimesRated() == null || p.getSeconds() == null);
        points.sort(Comparator.comparing(CurvePoint::getTimesRated));
        return points;
    }

    private static List<Double> multiples(List<CurvePoint> points) {
        return points.stream().map(p -> p.getTimesRated().doubleValue()).toList();
    }

    private static List<Double> seconds(List<CurvePoint> points) {
        return points.stream().map(p -> p.getSeconds().doubleValue()).toList();
    }
}
