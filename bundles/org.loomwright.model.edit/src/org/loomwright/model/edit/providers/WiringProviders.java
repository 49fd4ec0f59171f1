// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.common.notify.Notification;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Placement;
import org.loomwright.model.vehicle.Return;
import org.loomwright.model.vehicle.Setting;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Way;
import org.loomwright.model.vehicle.provider.ArrangementItemProvider;
import org.loomwright.model.vehicle.provider.CableItemProvider;
import org.loomwright.model.vehicle.provider.CoreItemProvider;
import org.loomwright.model.vehicle.provider.DeviceItemProvider;
import org.loomwright.model.vehicle.provider.PlacementItemProvider;
import org.loomwright.model.vehicle.provider.ReturnItemProvider;
import org.loomwright.model.vehicle.provider.SettingItemProvider;
import org.loomwright.model.vehicle.provider.TerminalItemProvider;
import org.loomwright.model.vehicle.provider.WayItemProvider;

/** Item providers of arrangements, devices and cables, with the labels of {@link WiringLabels}. */
final class WiringProviders {
    private WiringProviders() {
    }

    static final class OfArrangement extends ArrangementItemProvider {
        OfArrangement(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = WiringLabels.of((Arrangement) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfDevice extends DeviceItemProvider {
        OfDevice(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = WiringLabels.of((Device) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfSetting extends SettingItemProvider {
        OfSetting(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = WiringLabels.of((Setting) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfWay extends WayItemProvider {
        OfWay(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = WiringLabels.of((Way) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfTerminal extends TerminalItemProvider {
        OfTerminal(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = WiringLabels.of((Terminal) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfCable extends CableItemProvider {
        OfCable(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = WiringLabels.of((Cable) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfCore extends CoreItemProvider {
        OfCore(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = WiringLabels.of((Core) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfPlacement extends PlacementItemProvider {
        OfPlacement(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = WiringLabels.of((Placement) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfReturn extends ReturnItemProvider {
        OfReturn(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = WiringLabels.of((Return) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }
}
