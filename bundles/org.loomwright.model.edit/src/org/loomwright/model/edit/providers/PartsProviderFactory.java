// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import org.eclipse.emf.common.notify.Adapter;
import org.loomwright.model.parts.provider.PartsItemProviderAdapterFactory;

/** Item providers of parts libraries and stock: the generated ones, with labels as people read them. */
public final class PartsProviderFactory extends PartsItemProviderAdapterFactory {

    @Override
    public Adapter createPartsLibraryAdapter() {
        if (partsLibraryItemProvider == null) {
            partsLibraryItemProvider = new PartProviders.OfPartsLibrary(this);
        }
        return partsLibraryItemProvider;
    }

    @Override
    public Adapter createDevicePartAdapter() {
        if (devicePartItemProvider == null) {
            devicePartItemProvider = new PartProviders.OfDevicePart(this);
        }
        return devicePartItemProvider;
    }

    @Override
    public Adapter createProtectorPartAdapter() {
        if (protectorPartItemProvider == null) {
            protectorPartItemProvider = new PartProviders.OfProtectorPart(this);
        }
        return protectorPartItemProvider;
    }

    @Override
    public Adapter createCablePartAdapter() {
        if (cablePartItemProvider == null) {
            cablePartItemProvider = new PartProviders.OfCablePart(this);
        }
        return cablePartItemProvider;
    }

    @Override
    public Adapter createCableRowAdapter() {
        if (cableRowItemProvider == null) {
            cableRowItemProvider = new PartProviders.OfCableRow(this);
        }
        return cableRowItemProvider;
    }

    @Override
    public Adapter createDuctPartAdapter() {
        if (ductPartItemProvider == null) {
            ductPartItemProvider = new PartProviders.OfDuctPart(this);
        }
        return ductPartItemProvider;
    }

    @Override
    public Adapter createPassagePartAdapter() {
        if (passagePartItemProvider == null) {
            passagePartItemProvider = new PartProviders.OfPassagePart(this);
        }
        return passagePartItemProvider;
    }

    @Override
    public Adapter createEndPartAdapter() {
        if (endPartItemProvider == null) {
            endPartItemProvider = new PartProviders.OfEndPart(this);
        }
        return endPartItemProvider;
    }

    @Override
    public Adapter createStrapPartAdapter() {
        if (strapPartItemProvider == null) {
            strapPartItemProvider = new PartProviders.OfStrapPart(this);
        }
        return strapPartItemProvider;
    }

    @Override
    public Adapter createConsumablePartAdapter() {
        if (consumablePartItemProvider == null) {
            consumablePartItemProvider = new PartProviders.OfConsumablePart(this);
        }
        return consumablePartItemProvider;
    }

    @Override
    public Adapter createStockAdapter() {
        if (stockItemProvider == null) {
            stockItemProvider = new PartProviders.OfStock(this);
        }
        return stockItemProvider;
    }

    @Override
    public Adapter createCableStockAdapter() {
        if (cableStockItemProvider == null) {
            cableStockItemProvider = new PartProviders.OfCableStock(this);
        }
        return cableStockItemProvider;
    }

    @Override
    public Adapter createPieceStockAdapter() {
        if (pieceStockItemProvider == null) {
            pieceStockItemProvider = new PartProviders.OfPieceStock(this);
        }
        return pieceStockItemProvider;
    }
}
