// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import org.loomwright.model.parts.Coil;
import org.loomwright.model.parts.Contact;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.Diode;
import org.loomwright.model.parts.Driver;
import org.loomwright.model.parts.Joint;
import org.loomwright.model.parts.Protector;
import org.loomwright.model.parts.RestState;
import org.loomwright.model.parts.Shunt;
import org.loomwright.model.parts.Threshold;

/** Puts in what connects, measures, switches and protects. */
final class SwitchgearElements {
    private final ElementSite site;

    SwitchgearElements(ElementSite site) {
        this.site = site;
    }

    /** All of them; what drives a contact before the contact. */
    void addAll(DevicePart part) {
        part.getJoints().forEach(this::add);
        part.getShunts().forEach(this::add);
        part.getCoils().forEach(this::add);
        part.getThresholds().forEach(this::add);
        part.getContacts().forEach(this::add);
        part.getProtectors().forEach(this::add);
        part.getDiodes().forEach(this::add);
    }

    private void add(Joint joint) {
        String id = site.begin(joint);
        int a = site.terminal(joint.getA(), "a");
        int b = site.terminal(joint.getB(), "b");
        double ohm = site.ohm("milliohm", joint.getMilliohm(), "joint.end-max");
        double maxA = site.number("currentMaxA", joint.getCurrentMaxA());
        site.end(() -> new Plan.Joint(id, site.device(), a, b, ohm, maxA));
    }

    private void add(Shunt shunt) {
        String id = site.begin(shunt);
        int a = site.terminal(shunt.getA(), "a");
        int b = site.terminal(shunt.getB(), "b");
        double ohm = site.neededOhm(shunt.getMilliohm());
        double maxA = site.number("currentMaxA", shunt.getCurrentMaxA());
        site.end(() -> new Plan.Shunt(id, site.device(), a, b, ohm, maxA));
    }

    private void add(Coil coil) {
        String id = site.begin(coil);
        int a = site.terminal(coil.getA(), "a");
        int b = site.terminal(coil.getB(), "b");
        double ohm = site.needed("ohm", coil.getOhm());
        double pickUpV = site.needed("pickUpV", coil.getPickUpV());
        double dropOutV = site.needed("dropOutV", coil.getDropOutV());
        site.end(() -> new Plan.Coil(id, site.device(), a, b, ohm, pickUpV, dropOutV));
    }

    private void add(Threshold threshold) {
        String id = site.begin(threshold);
        int shunt = site.indexOf(threshold.getShunt());
        if (threshold.getShunt() != null && shunt < 0) {
            site.leaveOut("the shunt it senses is not part of the same part or has no resistance");
        }
        int plus = threshold.getShunt() != null ? -1 : site.terminal(threshold.getPlus(), "plus");
        int minus = threshold.getShunt() != null ? -1 : site.terminal(threshold.getMinus(), "minus");
        double onAt = site.needed("onAt", threshold.getOnAt());
        double offAt = site.needed("offAt", threshold.getOffAt());
        double onDelayS = site.number("onDelayS", threshold.getOnDelayS(), 0);
        double offDelayS = site.number("offDelayS", threshold.getOffDelayS(), 0);
        site.end(() -> new Plan.Threshold(id, site.device(), threshold.getName(), plus, minus, shunt, onAt, offAt, onDelayS,
                offDelayS));
    }

    private void add(Contact contact) {
        String id = site.begin(contact);
        int a = site.terminal(contact.getA(), "a");
        int b = site.terminal(contact.getB(), "b");
        Driver driver = contact.isSetDriver() ? contact.getDriver() : Driver.HAND;
        int drivenBy = driver == Driver.COIL ? site.indexOf(contact.getCoil())
                : driver == Driver.THRESHOLD ? site.indexOf(contact.getThreshold()) : -1;
        if (drivenBy < 0 && (driver == Driver.COIL || driver == Driver.THRESHOLD)) {
            site.leaveOut("the " + driver.getLiteral() + " that drives the contact is missing or left out");
        }
        boolean restClosed = contact.isSetRest() && contact.getRest() == RestState.CLOSED;
        double ohm = site.ohm("milliohm", contact.getMilliohm(), "contact.closed");
        double continuousA = site.number("continuousA", contact.getContinuousA());
        double makeA = site.number("makeA", contact.getMakeA());
        double breakA = site.number("breakA", contact.getBreakA());
        double ratedV = site.number("ratedV", contact.getRatedV());
        site.end(() -> new Plan.Contact(id, site.device(), contact.getName(), a, b, ohm, continuousA, makeA, breakA, ratedV,
                restClosed, driver.getLiteral(), drivenBy));
    }

    private void add(Protector protector) {
        String id = site.begin(protector);
        int a = site.terminal(protector.getA(), "a");
        int b = site.terminal(protector.getB(), "b");
        double ratingA = site.number("ratingA", protector.getRatingA());
        if (Double.isNaN(ratingA)) {
            site.problem("the protector states no ratingA; what it protects cannot be judged");
        }
        double ratedV = site.number("ratedV", protector.getRatedV());
        double breakingA = site.number("breakingA", protector.getBreakingA());
        double ohm = site.ohm("milliohm", protector.getMilliohm(), "protector.cold");
        Plan.FuseCurve curve = site.scope().parts().curve(protector.getCurve());
        site.end(() -> new Plan.Protector(id, site.device(), a, b, null, null, "fuse", null, ratingA, ratedV, breakingA, ohm,
                0, Double.NaN, curve, false));
    }

    private void add(Diode diode) {
        String id = site.begin(diode);
        int a = site.terminal(diode.getA(), "a");
        int b = site.terminal(diode.getB(), "b");
        double forwardV = site.needed("forwardV", diode.getForwardV());
        double ohm = site.ohm("milliohm", diode.getMilliohm(), "contact.closed");
        double maxA = site.number("currentMaxA", diode.getCurrentMaxA());
        site.end(() -> new Plan.Diode(id, site.device(), a, b, forwardV, ohm, maxA));
    }
}
