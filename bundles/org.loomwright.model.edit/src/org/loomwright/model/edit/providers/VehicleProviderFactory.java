// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import org.eclipse.emf.common.notify.Adapter;
import org.loomwright.model.vehicle.provider.VehicleItemProviderAdapterFactory;

/** Item providers of vehicle files: the generated ones, with labels as people read them. */
public final class VehicleProviderFactory extends VehicleItemProviderAdapterFactory {

    @Override
    public Adapter createVehicleAdapter() {
        if (vehicleItemProvider == null) {
            vehicleItemProvider = new StructureProviders.OfVehicle(this);
        }
        return vehicleItemProvider;
    }

    @Override
    public Adapter createDomainAdapter() {
        if (domainItemProvider == null) {
            domainItemProvider = new StructureProviders.OfDomain(this);
        }
        return domainItemProvider;
    }

    @Override
    public Adapter createZoneAdapter() {
        if (zoneItemProvider == null) {
            zoneItemProvider = new StructureProviders.OfZone(this);
        }
        return zoneItemProvider;
    }

    @Override
    public Adapter createPlaceAdapter() {
        if (placeItemProvider == null) {
            placeItemProvider = new StructureProviders.OfPlace(this);
        }
        return placeItemProvider;
    }

    @Override
    public Adapter createBodyAdapter() {
        if (bodyItemProvider == null) {
            bodyItemProvider = new StructureProviders.OfBody(this);
        }
        return bodyItemProvider;
    }

    @Override
    public Adapter createRunAdapter() {
        if (runItemProvider == null) {
            runItemProvider = new StructureProviders.OfRun(this);
        }
        return runItemProvider;
    }

    @Override
    public Adapter createDuctAdapter() {
        if (ductItemProvider == null) {
            ductItemProvider = new StructureProviders.OfDuct(this);
        }
        return ductItemProvider;
    }

    @Override
    public Adapter createPassageAdapter() {
        if (passageItemProvider == null) {
            passageItemProvider = new StructureProviders.OfPassage(this);
        }
        return passageItemProvider;
    }

    @Override
    public Adapter createBodyLinkAdapter() {
        if (bodyLinkItemProvider == null) {
            bodyLinkItemProvider = new StructureProviders.OfBodyLink(this);
        }
        return bodyLinkItemProvider;
    }

    @Override
    public Adapter createEarthPointAdapter() {
        if (earthPointItemProvider == null) {
            earthPointItemProvider = new StructureProviders.OfEarthPoint(this);
        }
        return earthPointItemProvider;
    }

    @Override
    public Adapter createBondAdapter() {
        if (bondItemProvider == null) {
            bondItemProvider = new StructureProviders.OfBond(this);
        }
        return bondItemProvider;
    }

    @Override
    public Adapter createArrangementAdapter() {
        if (arrangementItemProvider == null) {
            arrangementItemProvider = new WiringProviders.OfArrangement(this);
        }
        return arrangementItemProvider;
    }

    @Override
    public Adapter createDeviceAdapter() {
        if (deviceItemProvider == null) {
            deviceItemProvider = new WiringProviders.OfDevice(this);
        }
        return deviceItemProvider;
    }

    @Override
    public Adapter createSettingAdapter() {
        if (settingItemProvider == null) {
            settingItemProvider = new WiringProviders.OfSetting(this);
        }
        return settingItemProvider;
    }

    @Override
    public Adapter createWayAdapter() {
        if (wayItemProvider == null) {
            wayItemProvider = new WiringProviders.OfWay(this);
        }
        return wayItemProvider;
    }

    @Override
    public Adapter createTerminalAdapter() {
        if (terminalItemProvider == null) {
            terminalItemProvider = new WiringProviders.OfTerminal(this);
        }
        return terminalItemProvider;
    }

    @Override
    public Adapter createCableAdapter() {
        if (cableItemProvider == null) {
            cableItemProvider = new WiringProviders.OfCable(this);
        }
        return cableItemProvider;
    }

    @Override
    public Adapter createCoreAdapter() {
        if (coreItemProvider == null) {
            coreItemProvider = new WiringProviders.OfCore(this);
        }
        return coreItemProvider;
    }

    @Override
    public Adapter createPlacementAdapter() {
        if (placementItemProvider == null) {
            placementItemProvider = new WiringProviders.OfPlacement(this);
        }
        return placementItemProvider;
    }

    @Override
    public Adapter createReturnAdapter() {
        if (returnItemProvider == null) {
            returnItemProvider = new WiringProviders.OfReturn(this);
        }
        return returnItemProvider;
    }

    @Override
    public Adapter createCaseAdapter() {
        if (caseItemProvider == null) {
            caseItemProvider = new UseProviders.OfCase(this);
        }
        return caseItemProvider;
    }

    @Override
    public Adapter createZoneAmbientAdapter() {
        if (zoneAmbientItemProvider == null) {
            zoneAmbientItemProvider = new UseProviders.OfZoneAmbient(this);
        }
        return zoneAmbientItemProvider;
    }

    @Override
    public Adapter createBatteryStateAdapter() {
        if (batteryStateItemProvider == null) {
            batteryStateItemProvider = new UseProviders.OfBatteryState(this);
        }
        return batteryStateItemProvider;
    }

    @Override
    public Adapter createSwitchPositionAdapter() {
        if (switchPositionItemProvider == null) {
            switchPositionItemProvider = new UseProviders.OfSwitchPosition(this);
        }
        return switchPositionItemProvider;
    }

    @Override
    public Adapter createDemandStateAdapter() {
        if (demandStateItemProvider == null) {
            demandStateItemProvider = new UseProviders.OfDemandState(this);
        }
        return demandStateItemProvider;
    }

    @Override
    public Adapter createDayAdapter() {
        if (dayItemProvider == null) {
            dayItemProvider = new UseProviders.OfDay(this);
        }
        return dayItemProvider;
    }

    @Override
    public Adapter createDayStepAdapter() {
        if (dayStepItemProvider == null) {
            dayStepItemProvider = new UseProviders.OfDayStep(this);
        }
        return dayStepItemProvider;
    }

    @Override
    public Adapter createReadingSetAdapter() {
        if (readingSetItemProvider == null) {
            readingSetItemProvider = new UseProviders.OfReadingSet(this);
        }
        return readingSetItemProvider;
    }

    @Override
    public Adapter createReadingAdapter() {
        if (readingItemProvider == null) {
            readingItemProvider = new UseProviders.OfReading(this);
        }
        return readingItemProvider;
    }

    @Override
    public Adapter createFitRecordAdapter() {
        if (fitRecordItemProvider == null) {
            fitRecordItemProvider = new UseProviders.OfFitRecord(this);
        }
        return fitRecordItemProvider;
    }

    @Override
    public Adapter createWaiverAdapter() {
        if (waiverItemProvider == null) {
            waiverItemProvider = new UseProviders.OfWaiver(this);
        }
        return waiverItemProvider;
    }
}
