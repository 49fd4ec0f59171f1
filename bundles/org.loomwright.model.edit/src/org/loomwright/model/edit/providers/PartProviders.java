// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.common.notify.Notification;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.CableRow;
import org.loomwright.model.parts.CableStock;
import org.loomwright.model.parts.ConsumablePart;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.DuctPart;
import org.loomwright.model.parts.EndPart;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.parts.PassagePart;
import org.loomwright.model.parts.PieceStock;
import org.loomwright.model.parts.ProtectorPart;
import org.loomwright.model.parts.Stock;
import org.loomwright.model.parts.StrapPart;
import org.loomwright.model.parts.provider.CablePartItemProvider;
import org.loomwright.model.parts.provider.CableRowItemProvider;
import org.loomwright.model.parts.provider.CableStockItemProvider;
import org.loomwright.model.parts.provider.ConsumablePartItemProvider;
import org.loomwright.model.parts.provider.DevicePartItemProvider;
import org.loomwright.model.parts.provider.DuctPartItemProvider;
import org.loomwright.model.parts.provider.EndPartItemProvider;
import org.loomwright.model.parts.provider.PartsLibraryItemProvider;
import org.loomwright.model.parts.provider.PassagePartItemProvider;
import org.loomwright.model.parts.provider.PieceStockItemProvider;
import org.loomwright.model.parts.provider.ProtectorPartItemProvider;
import org.loomwright.model.parts.provider.StockItemProvider;
import org.loomwright.model.parts.provider.StrapPartItemProvider;

/** Item providers of libraries, parts and stock, with the labels of {@link PartLabels}. */
final class PartProviders {
    private PartProviders() {
    }

    static final class OfPartsLibrary extends PartsLibraryItemProvider {
        OfPartsLibrary(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PartLabels.of((PartsLibrary) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfDevicePart extends DevicePartItemProvider {
        OfDevicePart(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PartLabels.of((DevicePart) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfProtectorPart extends ProtectorPartItemProvider {
        OfProtectorPart(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PartLabels.of((ProtectorPart) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfCablePart extends CablePartItemProvider {
        OfCablePart(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PartLabels.of((CablePart) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfCableRow extends CableRowItemProvider {
        OfCableRow(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PartLabels.of((CableRow) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfDuctPart extends DuctPartItemProvider {
        OfDuctPart(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PartLabels.of((DuctPart) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfPassagePart extends PassagePartItemProvider {
        OfPassagePart(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PartLabels.of((PassagePart) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfEndPart extends EndPartItemProvider {
        OfEndPart(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PartLabels.of((EndPart) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfStrapPart extends StrapPartItemProvider {
        OfStrapPart(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PartLabels.of((StrapPart) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfConsumablePart extends ConsumablePartItemProvider {
        OfConsumablePart(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PartLabels.of((ConsumablePart) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfStock extends StockItemProvider {
        OfStock(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PartLabels.of((Stock) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfCableStock extends CableStockItemProvider {
        OfCableStock(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PartLabels.of((CableStock) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfPieceStock extends PieceStockItemProvider {
        OfPieceStock(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PartLabels.of((PieceStock) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }
}
