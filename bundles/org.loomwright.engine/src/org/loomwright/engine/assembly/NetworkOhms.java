// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import org.loomwright.engine.heat.ConductorAmbient;
import org.loomwright.engine.heat.Copper;

/**
 * Resistances of one case, ohm, all above 0: the largest of the practice where nothing is stated, or, in a case that wants
 * them cold and smallest, the smallest.
 */
final class NetworkOhms {
    private final Plan plan;
    private final Plan.Case state;
    private final boolean smallest;

    NetworkOhms(Plan plan, Plan.Case state) {
        this.plan = plan;
        this.state = state;
        smallest = state.resistancesColdMin();
    }

    /** Both end joints of a conductor. */
    double joints(Plan.Conductor conductor) {
        double ends = 2 * milli(smallest ? "joint.end-min" : "joint.end-max");
        return smallest ? least(conductor.jointsOhm(), ends) : orElse(conductor.jointsOhm(), ends);
    }

    /** The conductor itself at 20 degrees Celsius, without its joints; NaN when its section or length is not known. */
    double conductor(Plan.Conductor conductor) {
        double lengthM = plan.cables().get(conductor.cable()).lengthMm() / 1000;
        return lengthM * (smallest ? conductor.r20NominalOhmPerM() : conductor.r20MaxOhmPerM());
    }

    /** An earth point's contact with its body, half of the body's own resistance included. */
    double earthContact(Plan.Terminal point) {
        double practice = milli(smallest ? "joint.earth-point-min" : "joint.earth-point-max");
        double contact = smallest ? least(point.contactOhm(), practice) : orElse(point.contactOhm(), practice);
        return contact + half(point.body());
    }

    /** A case's contact with the body it is bolted to, half of the body's own resistance included. */
    double caseContact(int body) {
        return milli(smallest ? "joint.case-min" : "joint.case-max") + half(body);
    }

    double bodyLink(Plan.BodyLink link) {
        return orElse(link.ohm(), milli("joint.bolted-bond")) + half(link.bodyA()) + half(link.bodyB());
    }

    double bond(Plan.Bond bond) {
        return orElse(bond.ohm(), milli("joint.bolted-bond"));
    }

    double joint(Plan.Joint joint) {
        return orElse(joint.ohm(), milli(smallest ? "joint.end-min" : "joint.end-max"));
    }

    double contact(double ohm) {
        return orElse(ohm, milli("contact.closed"));
    }

    double protector(Plan.Protector protector) {
        double seat = protector.seatOhm() > 0 ? protector.seatOhm() : 0;
        return orElse(protector.ohm(), milli("protector.cold")) + seat;
    }

    double droop(double ohm) {
        return orElse(ohm, milli("source.droop"));
    }

    /** Warm coil over the same at 20 degrees Celsius: its ambient and the rise of the practice; 1 in a cold case. */
    double coilFactor(int device) {
        if (smallest) {
            return 1;
        }
        double ambientC = ConductorAmbient.of(state, plan.devices().get(device).zone());
        return Copper.factor(ambientC + plan.practice().value("relay-pull-in.coil-rise"));
    }

    private double half(int body) {
        double ohm = plan.bodies().get(body).ohm();
        return ohm > 0 ? ohm / 2 : 0;
    }

    private double milli(String limit) {
        return plan.practice().value(limit) / 1000;
    }

    private static double orElse(double ohm, double otherwise) {
        return ohm > 0 ? ohm : otherwise;
    }

    private static double least(double ohm, double practice) {
        return ohm > 0 ? StrictMath.min(ohm, practice) : practice;
    }
}
