// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.common.notify.Notification;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.BodyLink;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.Domain;
import org.loomwright.model.vehicle.Duct;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Passage;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.Zone;
import org.loomwright.model.vehicle.provider.BodyItemProvider;
import org.loomwright.model.vehicle.provider.BodyLinkItemProvider;
import org.loomwright.model.vehicle.provider.BondItemProvider;
import org.loomwright.model.vehicle.provider.DomainItemProvider;
import org.loomwright.model.vehicle.provider.DuctItemProvider;
import org.loomwright.model.vehicle.provider.EarthPointItemProvider;
import org.loomwright.model.vehicle.provider.PassageItemProvider;
import org.loomwright.model.vehicle.provider.PlaceItemProvider;
import org.loomwright.model.vehicle.provider.RunItemProvider;
import org.loomwright.model.vehicle.provider.VehicleItemProvider;
import org.loomwright.model.vehicle.provider.ZoneItemProvider;

/** Item providers of a vehicle and of what it is made of, with the labels of {@link StructureLabels}. */
final class StructureProviders {
    private StructureProviders() {
    }

    static final class OfVehicle extends VehicleItemProvider {
        OfVehicle(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = StructureLabels.of((Vehicle) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfDomain extends DomainItemProvider {
        OfDomain(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = StructureLabels.of((Domain) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfZone extends ZoneItemProvider {
        OfZone(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = StructureLabels.of((Zone) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfPlace extends PlaceItemProvider {
        OfPlace(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = StructureLabels.of((Place) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfBody extends BodyItemProvider {
        OfBody(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = StructureLabels.of((Body) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfRun extends RunItemProvider {
        OfRun(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = StructureLabels.of((Run) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfDuct extends DuctItemProvider {
        OfDuct(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = StructureLabels.of((Duct) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfPassage extends PassageItemProvider {
        OfPassage(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = StructureLabels.of((Passage) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfBodyLink extends BodyLinkItemProvider {
        OfBodyLink(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = StructureLabels.of((BodyLink) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfEarthPoint extends EarthPointItemProvider {
        OfEarthPoint(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = StructureLabels.of((EarthPoint) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfBond extends BondItemProvider {
        OfBond(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = StructureLabels.of((Bond) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }
}
