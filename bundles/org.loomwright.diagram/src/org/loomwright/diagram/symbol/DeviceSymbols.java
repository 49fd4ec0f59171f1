// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.symbol;

import org.loomwright.model.parts.DeviceKind;
import org.loomwright.model.parts.DevicePart;

/** Which symbol stands for a device as a whole. */
public final class DeviceSymbols {
    private DeviceSymbols() {
    }

    /** Of a part; the plain load's for a device whose part or kind is not known yet. */
    public static SymbolKind of(DevicePart part) {
        return part == null || part.getKind() == null ? SymbolKind.LOAD : of(part.getKind());
    }

    /** Of a kind. */
    public static SymbolKind of(DeviceKind kind) {
        return switch (kind) {
            case BATTERY -> SymbolKind.BATTERY;
            case ALTERNATOR -> SymbolKind.GENERATOR;
            case STARTER, MOTOR -> SymbolKind.MOTOR;
            case SOLAR_PANEL -> SymbolKind.SOLAR;
            case CHARGER -> SymbolKind.RECTIFIER;
            case CONVERTER -> SymbolKind.CONVERTER;
            case INVERTER -> SymbolKind.INVERTER;
            case LAMP -> SymbolKind.LAMP;
            case HEATER -> SymbolKind.HEATER;
            case COOLER -> SymbolKind.COOLER;
            case RADIO -> SymbolKind.RADIO;
            case SOCKET -> SymbolKind.SOCKET;
            case SENSOR -> SymbolKind.SENSOR;
            case SCREEN -> SymbolKind.SCREEN;
            case BOX, BUSBAR -> SymbolKind.BOX;
            case SPLICE -> SymbolKind.JUNCTION;
            case CONNECTOR -> SymbolKind.CONNECTOR;
            case RELAY, SWITCH, ISOLATOR, CUT_OUT, SPLIT_CHARGE -> SymbolKind.CONTACT_OPEN;
            case SHUNT -> SymbolKind.SHUNT;
            case MONITOR -> SymbolKind.METER;
            case CONTROLLER -> SymbolKind.CONTROLLER;
            case LOAD -> SymbolKind.LOAD;
        };
    }
}
