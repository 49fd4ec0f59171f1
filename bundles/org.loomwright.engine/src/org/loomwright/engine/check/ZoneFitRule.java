// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * A device suits the zone it sits in: its protection code, that of the box it is mounted in counting too, its ambient range,
 * and no switching contacts or fuses where fuel or gas may gather. A part without a code or a range is not judged by it. The
 * base vehicle's own devices sit where their maker put them.
 */
final class ZoneFitRule implements Rule {
    @Override
    public String slug() {
        return "zone-fit";
    }

    @Override
    public String says() {
        return "Devices bear the water, the heat and the hazards of their zone.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Plan plan = context.plan();
        for (int d = 0; d < plan.devices().size(); d++) {
            Plan.Device device = plan.devices().get(d);
            if (!device.existing() && device.zone() >= 0) {
                Plan.Zone zone = plan.zones().get(device.zone());
                ingress(context, device, zone, findings);
                ambient(context, device, zone, findings);
                hazard(context, d, device, zone, findings);
            }
        }
        return findings;
    }

    private void ingress(CheckContext context, Plan.Device device, Plan.Zone zone, List<Finding> findings) {
        Optional<IngressCode> wanted = IngressCode.of(zone.wetness());
        Optional<IngressCode> own = IngressCode.of(device.ingress());
        if (wanted.isEmpty() || own.isEmpty()) {
            return;
        }
        IngressCode code = own.get();
        int host = device.mountedIn();
        for (int hops = 0; host >= 0 && hops < context.plan().devices().size(); hops++) {
            Optional<IngressCode> around = IngressCode.of(context.plan().devices().get(host).ingress());
            code = around.isPresent() ? code.inside(around.get()) : code;
            host = context.plan().devices().get(host).mountedIn();
        }
        if (!code.meets(wanted.get())) {
            findings.add(zone(context, device, zone, Severity.ERROR, " is " + device.ingress() + ", zone " + zone.id() + " wants "
                    + zone.wetness())
                    .because(code.water() < wanted.get().water() ? "Water gets in; contacts corrode and creep currents flow."
                            : "Dust and dirt get in.")
                    .mend(Mend.inWords("Use a part of " + zone.wetness() + " or better, mount it in a box that is, or move it."))
                    .build());
        }
    }

    private void ambient(CheckContext context, Plan.Device device, Plan.Zone zone, List<Finding> findings) {
        if (Beyond.below(device.ambientMaxC(), zone.ambientMaxC())) {
            Quantity is = Quantity.of(zone.ambientMaxC(), "degC");
            Quantity wanted = Quantity.of(device.ambientMaxC(), "degC");
            findings.add(zone(context, device, zone, Severity.ERROR, " bears at most " + wanted + ", zone " + zone.id()
                    + " gets " + is)
                    .figures(is, wanted).mend(Mend.inWords("Move it to a cooler zone, or use a part for " + is + ".")).build());
        }
        if (Beyond.above(device.ambientMinC(), zone.ambientMinC())) {
            Quantity is = Quantity.of(zone.ambientMinC(), "degC");
            Quantity wanted = Quantity.of(device.ambientMinC(), "degC");
            findings.add(zone(context, device, zone, Severity.WARNING, " works down to " + wanted + ", zone " + zone.id()
                    + " gets " + is)
                    .figures(is, wanted)
                    .mend(Mend.inWords("Leave it off below " + wanted + ", or use a part for " + is + ".")).build());
        }
    }

    private FindingBuilder zone(CheckContext context, Plan.Device device, Plan.Zone zone, Severity severity, String text) {
        String label = device.label() == null || device.label().isEmpty() ? "" : " (" + device.label() + ")";
        return Finding.of(slug(), severity, device.id(), context.names().shown(device.id()) + label + text)
                .causedBy(zone.id(), "zone it sits in", null);
    }

    private void hazard(CheckContext context, int d, Plan.Device device, Plan.Zone zone, List<Finding> findings) {
        String hazard = zone.gasLocker() ? "is a gas locker" : zone.fuel() ? "has fuel lines or a tank"
                : zone.batteryVent() ? "takes the gas of batteries" : null;
        boolean sparks = context.plan().elements().stream().anyMatch(element -> element.device() == d
                && (element instanceof Plan.Contact || element instanceof Plan.Protector));
        if (hazard != null && sparks) {
            boolean contacts = context.plan().elements().stream().anyMatch(element -> element.device() == d
                    && element instanceof Plan.Contact);
            findings.add(zone(context, device, zone, Severity.ERROR, contacts ? " has switching contacts, zone " + zone.id()
                    + " " + hazard
                    : " has fuses, zone " + zone.id() + " " + hazard)
                    .because("A contact that opens and a fuse that blows make a spark, and gas or vapour may be there.")
                    .mend(Mend.inWords("Move it out of " + zone.id() + ".")).build());
        }
    }
}
