// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.common.notify.Notification;
import org.loomwright.model.vehicle.BatteryState;
import org.loomwright.model.vehicle.Case;
import org.loomwright.model.vehicle.Day;
import org.loomwright.model.vehicle.DayStep;
import org.loomwright.model.vehicle.DemandState;
import org.loomwright.model.vehicle.FitRecord;
import org.loomwright.model.vehicle.Reading;
import org.loomwright.model.vehicle.ReadingSet;
import org.loomwright.model.vehicle.SwitchPosition;
import org.loomwright.model.vehicle.Waiver;
import org.loomwright.model.vehicle.ZoneAmbient;
import org.loomwright.model.vehicle.provider.BatteryStateItemProvider;
import org.loomwright.model.vehicle.provider.CaseItemProvider;
import org.loomwright.model.vehicle.provider.DayItemProvider;
import org.loomwright.model.vehicle.provider.DayStepItemProvider;
import org.loomwright.model.vehicle.provider.DemandStateItemProvider;
import org.loomwright.model.vehicle.provider.FitRecordItemProvider;
import org.loomwright.model.vehicle.provider.ReadingItemProvider;
import org.loomwright.model.vehicle.provider.ReadingSetItemProvider;
import org.loomwright.model.vehicle.provider.SwitchPositionItemProvider;
import org.loomwright.model.vehicle.provider.WaiverItemProvider;
import org.loomwright.model.vehicle.provider.ZoneAmbientItemProvider;

/** Item providers of cases, days and records, with the labels of {@link UseLabels}. */
final class UseProviders {
    private UseProviders() {
    }

    static final class OfCase extends CaseItemProvider {
        OfCase(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = UseLabels.of((Case) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfZoneAmbient extends ZoneAmbientItemProvider {
        OfZoneAmbient(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = UseLabels.of((ZoneAmbient) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfBatteryState extends BatteryStateItemProvider {
        OfBatteryState(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = UseLabels.of((BatteryState) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfSwitchPosition extends SwitchPositionItemProvider {
        OfSwitchPosition(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = UseLabels.of((SwitchPosition) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfDemandState extends DemandStateItemProvider {
        OfDemandState(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = UseLabels.of((DemandState) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfDay extends DayItemProvider {
        OfDay(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = UseLabels.of((Day) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfDayStep extends DayStepItemProvider {
        OfDayStep(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = UseLabels.of((DayStep) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfReadingSet extends ReadingSetItemProvider {
        OfReadingSet(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = UseLabels.of((ReadingSet) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfReading extends ReadingItemProvider {
        OfReading(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = UseLabels.of((Reading) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfFitRecord extends FitRecordItemProvider {
        OfFitRecord(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = UseLabels.of((FitRecord) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfWaiver extends WaiverItemProvider {
        OfWaiver(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = UseLabels.of((Waiver) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }
}
