// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import org.loomwright.model.parts.DevicePart;

/** Class letters of devices after IEC 81346-2, by what a part is for. */
public final class ClassLetters {
    private static final String UNKNOWN = "A";

    private ClassLetters() {
    }

    /** The letter for devices of a part, for example G for a battery; A where the purpose is not known or not one. */
    public static String of(DevicePart part) {
        if (part == null || !part.isSetKind()) {
            return UNKNOWN;
        }
        return switch (part.getKind()) {
            case BATTERY, ALTERNATOR, SOLAR_PANEL -> "G";
            case STARTER, MOTOR -> "M";
            case CHARGER, CONVERTER, INVERTER, RADIO -> "T";
            case LAMP, HEATER, COOLER -> "E";
            case SENSOR, SHUNT -> "B";
            case SCREEN, MONITOR -> "P";
            // a holder of one fuse protects, a box of several distributes
            case BOX -> part.getWays().size() == 1 ? "F" : "X";
            case SOCKET, BUSBAR, SPLICE, CONNECTOR -> "X";
            case RELAY, CUT_OUT, SPLIT_CHARGE, CONTROLLER -> "K";
            case SWITCH -> "S";
            case ISOLATOR -> "Q";
            case LOAD -> UNKNOWN;
        };
    }
}
