// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.loomwright.model.parts.Cell;
import org.loomwright.model.parts.Converter;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.OcvPoint;
import org.loomwright.model.parts.Regulated;

/** Puts in cells, regulated sources and converters. */
final class SourceElements {
    /** Temperature of an open-circuit voltage whose point states none, degrees Celsius; see the parts metamodel. */
    private static final BigDecimal OCV_AT_C = new BigDecimal(25);

    private final ElementSite site;

    SourceElements(ElementSite site) {
        this.site = site;
    }

    /** All of them. */
    void addAll(DevicePart part) {
        part.getCells().forEach(this::add);
        part.getRegulators().forEach(this::add);
        part.getConverters().forEach(this::add);
    }

    private void add(Cell cell) {
        String id = site.begin(cell);
        int a = site.terminal(cell.getA(), "a");
        int b = site.terminal(cell.getB(), "b");
        List<OcvPoint> ocv = ocvPoints(cell);
        if (ocv.isEmpty()) {
            site.leaveOut("the part states no open-circuit voltages; expected ocv points");
        }
        double stated = milliohm("rMaxMilliohm", cell.getRMaxMilliohm());
        double least = milliohm("rMinMilliohm", cell.getRMinMilliohm());
        if (Double.isNaN(stated) && Double.isNaN(least)) {
            site.leaveOut("the part states no resistance; expected rMinMilliohm and rMaxMilliohm above 0");
        }
        if (least > stated) {
            site.problem("rMinMilliohm is above rMaxMilliohm; expected the resistance full, warm and new to be the smaller. The"
                    + " two are taken the other way round");
        }
        double rMin = Double.isNaN(least) ? stated : Double.isNaN(stated) ? least : StrictMath.min(least, stated);
        double rMax = Double.isNaN(stated) ? least : Double.isNaN(least) ? stated : StrictMath.max(least, stated);
        double nominalV = site.needed("nominalV", cell.getNominalV());
        double capacityAh = site.number("capacityAh", cell.getCapacityAh());
        double ratedHours = site.number("ratedHours", cell.getRatedHours());
        double peukert = site.number("peukert", cell.getPeukert());
        double chargeMaxA = site.number("chargeMaxA", cell.getChargeMaxA());
        double dischargeMaxA = site.number("dischargeMaxA", cell.getDischargeMaxA());
        double chargeMinC = site.number("chargeMinC", cell.getChargeMinC());
        double tripA = site.number("tripA", cell.getTripA());
        double tripS = site.number("tripS", cell.getTripS());
        double cutV = site.number("cutV", cell.getCutV());
        site.end(() -> new Plan.Cell(id, site.device(), a, b, cell.isSetChemistry() ? cell.getChemistry().getLiteral() : null,
                nominalV, capacityAh, ratedHours, peukert, rMin, rMax, chargeMaxA, dischargeMaxA, chargeMinC, tripA, tripS,
                cutV, ocv.stream().map(p -> p.getCharge().doubleValue()).toList(),
                ocv.stream().map(p -> p.getVolt().doubleValue()).toList()));
    }

    private double milliohm(String quantity, BigDecimal stated) {
        double ohm = Decimals.thousandth(site.value(quantity, stated));
        return ohm > 0 ? ohm : Double.NaN;
    }

    /** The points of the temperature nearest to 25 degrees Celsius, charge rising. */
    private static List<OcvPoint> ocvPoints(Cell cell) {
        List<OcvPoint> points = new ArrayList<>(cell.getOcv());
        points.removeIf(p -> p.getCharge() == null || p.getVolt() == null);
        BigDecimal nearest = points.stream().map(SourceElements::away).min(Comparator.naturalOrder()).orElse(BigDecimal.ZERO);
        points.removeIf(p -> away(p).compareTo(nearest) != 0);
        points.sort(Comparator.comparing(OcvPoint::getCharge));
        return points;
    }

    private static BigDecimal away(OcvPoint point) {
        return point.getAtC() == null ? BigDecimal.ZERO : point.getAtC().subtract(OCV_AT_C).abs();
    }

    private void add(Regulated source) {
        String id = site.begin(source);
        int a = site.terminal(source.getA(), "a");
        int b = site.terminal(source.getB(), "b");
        double setV = site.needed("setV", source.getSetV());
        double perK = site.number("temperatureVPerK", source.getTemperatureVPerK(), 0);
        double referenceC = perK == 0 ? site.number("referenceC", source.getReferenceC(), 0)
                : site.needed("referenceC", source.getReferenceC());
        double droopOhm = site.ohm("droopMilliohm", source.getDroopMilliohm(), "source.droop");
        List<Plan.LimitPoint> limits = limits(source);
        double limitA = site.number("limitA", source.getLimitA());
        if (Double.isNaN(limitA) && limits.isEmpty()) {
            site.leaveOut("the part states no current limit; expected limitA or limits");
        }
        int senseA = site.optionalTerminal(source.getSensePlus());
        int senseB = site.optionalTerminal(source.getSenseMinus());
        String runsOn = source.isSetRunsOn() ? source.getRunsOn().getLiteral() : "always";
        site.end(() -> new Plan.Regulated(id, site.device(), a, b, setV, perK, referenceC, droopOhm, limitA, limits, runsOn,
                senseA, senseB));
    }

    /** Limit points by speed, then ambient; where the device sets limitA itself, that counts instead. */
    private List<Plan.LimitPoint> limits(Regulated source) {
        if (site.sets("limitA")) {
            return List.of();
        }
        return source.getLimits().stream().filter(p -> p.getAmps() != null)
                .map(p -> new Plan.LimitPoint(Decimals.of(p.getRpm()), Decimals.of(p.getAmbientC()),
                        p.getAmps().doubleValue()))
                .sorted(Comparator.comparingDouble(Plan.LimitPoint::rpm).thenComparingDouble(Plan.LimitPoint::ambientC)
                        .thenComparingDouble(Plan.LimitPoint::amps))
                .toList();
    }

    private void add(Converter converter) {
        String id = site.begin(converter);
        int inA = site.terminal(converter.getInPlus(), "inPlus");
        int inB = site.terminal(converter.getInMinus(), "inMinus");
        int outA = site.terminal(converter.getOutPlus(), "outPlus");
        int outB = site.terminal(converter.getOutMinus(), "outMinus");
        double setV = site.needed("setV", converter.getSetV());
        double limitA = site.needed("limitA", converter.getLimitA());
        double droopOhm = site.ohm("droopMilliohm", converter.getDroopMilliohm(), "source.droop");
        double efficiency = site.needed("efficiency", converter.getEfficiency());
        double standbyW = site.number("standbyW", converter.getStandbyW(), 0);
        double offV = site.number("offV", converter.getOffV());
        double restartV = site.number("restartV", converter.getRestartV(), offV);
        String runsOn = converter.isSetRunsOn() ? converter.getRunsOn().getLiteral() : "always";
        site.end(() -> new Plan.Converter(id, site.device(), inA, inB, outA, outB, setV, limitA, droopOhm, efficiency,
                standbyW, Decimals.yes(converter.getIsolated()), offV, Double.isNaN(offV) ? Double.NaN : restartV, runsOn));
    }
}
