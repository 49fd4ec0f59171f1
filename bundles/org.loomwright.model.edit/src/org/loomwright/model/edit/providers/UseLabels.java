// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import org.loomwright.model.vehicle.BatteryState;
import org.loomwright.model.vehicle.Case;
import org.loomwright.model.vehicle.Day;
import org.loomwright.model.vehicle.DayStep;
import org.loomwright.model.vehicle.DemandState;
import org.loomwright.model.vehicle.FitRecord;
import org.loomwright.model.vehicle.Ignition;
import org.loomwright.model.vehicle.Reading;
import org.loomwright.model.vehicle.ReadingSet;
import org.loomwright.model.vehicle.SwitchPosition;
import org.loomwright.model.vehicle.Waiver;
import org.loomwright.model.vehicle.ZoneAmbient;

/** Labels of cases and days, of what was measured, fitted and accepted. */
final class UseLabels {
    private UseLabels() {
    }

    /** {@code evening  Evening at the camp, parked, ignition off}. */
    static String of(Case state) {
        return new LabelText(state.getName()).add(state.getLabel()).add(state.isSetKind() ? state.getKind() : null)
                .add(state.isSetIgnition() ? "ignition " + LabelText.words(state.getIgnition()) : null)
                .add(Boolean.TRUE.equals(state.getEngine()) && state.getIgnition() != Ignition.START ? "engine running" : null)
                .add(LabelText.quantity(state.getEngineRpm(), "1/min")).addIf(state.getShore(), "on shore supply")
                .addIf(state.getAllOn(), "everything on").text();
    }

    /** {@code roof  60 degC}. */
    static String of(ZoneAmbient ambient) {
        return new LabelText(Designated.name(ambient.getZone())).add(ambient.getAmbientC(), "degC").text();
    }

    /** {@code -G10  charge 0.8, -10 degC, age 0.5}. */
    static String of(BatteryState state) {
        return new LabelText(Designated.of(state.getDevice()))
                .add(state.getCharge() == null ? null : "charge " + state.getCharge().toPlainString())
                .add(state.getTemperatureC(), "degC")
                .add(state.getAge() == null ? null : "age " + state.getAge().toPlainString()).text();
    }

    /** {@code -S1  closed}. */
    static String of(SwitchPosition position) {
        Boolean closed = position.getClosed();
        return new LabelText(Designated.of(position.getDevice())).add(position.getContact())
                .add(closed == null ? null : closed ? "closed" : "open").text();
    }

    /** {@code -E4  x 0.5, 60 s of 600 s}. */
    static String of(DemandState state) {
        String period = LabelText.quantity(state.getPeriodS(), "s");
        String on = LabelText.quantity(state.getOnS(), "s");
        return new LabelText(Designated.of(state.getDevice())).add(state.getElement())
                .add(state.getFactor() == null ? null : state.getFactor().signum() == 0 ? "off"
                        : "x " + state.getFactor().toPlainString())
                .add(on == null || period == null ? on : on + " of " + period).text();
    }

    /** {@code field-day  Day in the field, 4 steps}. */
    static String of(Day day) {
        int steps = day.getSteps().size();
        return new LabelText(day.getName()).add(day.getLabel()).add(steps + (steps == 1 ? " step" : " steps")).text();
    }

    /** {@code 6.5 h  evening}. */
    static String of(DayStep step) {
        return new LabelText(LabelText.quantity(step.getHours(), "h")).add(Designated.name(step.getCase()))
                .add(step.getSun() == null ? null : "sun " + step.getSun().toPlainString()).text();
    }

    /** {@code first-light  2031-04-02, central}. */
    static String of(ReadingSet set) {
        return new LabelText(set.getName()).add(set.getLabel()).add(set.getWhen())
                .add(Designated.name(set.getArrangement())).text();
    }

    /** {@code -G1:30 / -X1:30  0.12 V}. */
    static String of(Reading reading) {
        String unit = reading.getUnit() == null ? "" : reading.getUnit();
        return new LabelText(Designated.between(Designated.at(reading.getA()), Designated.at(reading.getB())))
                .add(reading.getValue(), unit).add(reading.getKind()).text();
    }

    /** {@code 2031-04-02  Strap renewed}. */
    static String of(FitRecord record) {
        return new LabelText(record.getWhen() == null ? record.getName() : record.getWhen()).add(record.getWhat()).text();
    }

    /** {@code section-min  at central/W12, tail of the sensor}. */
    static String of(Waiver waiver) {
        return new LabelText(waiver.getRule()).add(waiver.getElement() == null ? null : "at " + waiver.getElement())
                .add(waiver.getReason()).text();
    }
}
