// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import org.loomwright.model.parts.Demand;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.DropClass;
import org.loomwright.model.parts.LoadLaw;
import org.loomwright.model.vehicle.Device;

/** Puts in loads. */
final class LoadElements {
    private final ElementSite site;
    private final Device device;

    LoadElements(ElementSite site, Device device) {
        this.site = site;
        this.device = device;
    }

    /** All of them. */
    void addAll(DevicePart part) {
        part.getDemands().forEach(this::add);
    }

    private void add(Demand demand) {
        String id = site.begin(demand);
        int a = site.terminal(demand.getA(), "a");
        int b = site.terminal(demand.getB(), "b");
        Amount amount = amount(demand);
        double efficiency = site.number("efficiency", demand.getEfficiency(), 1);
        double noLoadW = site.number("noLoadW", demand.getNoLoadW(), 0);
        double standbyA = site.number("standbyA", demand.getStandbyA(), 0);
        double minV = site.number("minV", demand.getMinV());
        double maxV = site.number("maxV", demand.getMaxV());
        double offV = site.number("offV", demand.getOffV());
        double restartV = site.number("restartV", demand.getRestartV(), offV);
        double inrushA = site.number("inrushA", demand.getInrushA());
        double inrushS = site.number("inrushS", demand.getInrushS());
        double inrushFarad = Decimals.millionth(site.value("inrushMicrofarad", demand.getInrushMicrofarad()));
        double formFactor = site.number("formFactor", demand.getFormFactor(), 1);
        site.end(() -> new Plan.Demand(id, site.device(), demand.getName(), a, b, amount.law().getLiteral(), amount.watts(),
                amount.amps(), amount.ohms(), amount.refV(), efficiency, noLoadW, standbyA, minV, maxV, offV,
                Double.isNaN(offV) ? Double.NaN : restartV, inrushA, inrushS, inrushFarad, formFactor,
                Decimals.yes(demand.getCanOverload()), critical(demand)));
    }

    private boolean critical(Demand demand) {
        return device.isSetDropClass() ? device.getDropClass() == DropClass.CRITICAL
                : demand.isSetDropClass() && demand.getDropClass() == DropClass.CRITICAL;
    }

    /** What a load takes: the law, and the figures that belong to it; the others NaN. */
    private record Amount(LoadLaw law, double watts, double amps, double ohms, double refV) {
    }

    /**
     * The figure that the law keeps constant, worked out from another one where the part states only that: P = U I and R =
     * U^2 / P
     * at the reference voltage. A figure set on the device goes before the part's.
     */
    private Amount amount(Demand demand) {
        double watts = site.number("watts", demand.getWatts());
        double amps = site.number("amps", demand.getAmps());
        double ohms = site.number("ohms", demand.getOhms());
        double refV = site.number("refV", demand.getRefV());
        LoadLaw law = demand.isSetLaw() ? demand.getLaw()
                : !Double.isNaN(watts) ? LoadLaw.POWER : !Double.isNaN(amps) ? LoadLaw.CURRENT : LoadLaw.RESISTANCE;
        double value = switch (law) {
            case POWER -> pick("watts", watts, "amps", amps * refV);
            case CURRENT -> pick("amps", amps, "watts", watts / refV);
            case RESISTANCE -> pick("ohms", ohms, "watts", refV * refV / watts);
        };
        if (!(value >= 0) || Double.isInfinite(value)) {
            site.leaveOut("the part states no " + switch (law) {
                case POWER -> "watts, nor amps with refV";
                case CURRENT -> "amps, nor watts with refV";
                case RESISTANCE -> "ohms, nor watts with refV";
            });
        }
        return switch (law) {
            case POWER -> new Amount(law, value, Double.NaN, Double.NaN, refV);
            case CURRENT -> new Amount(law, Double.NaN, value, Double.NaN, refV);
            case RESISTANCE -> new Amount(law, watts, Double.NaN, value, refV);
        };
    }

    private double pick(String quantity, double own, String other, double derived) {
        boolean onlyOtherSet = site.sets(other) && !site.sets(quantity) && !Double.isNaN(derived);
        return Double.isNaN(own) || onlyOtherSet ? derived : own;
    }
}
