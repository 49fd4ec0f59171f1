// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.symbol;

/** The symbols there are, after IEC 60617. */
public enum SymbolKind {
    /** Fuse in its conductor. */
    FUSE,
    /** Place of a fuse that is not fitted. */
    FUSE_SPARE,
    /** Circuit breaker. */
    BREAKER,
    /** Battery of two cells drawn. */
    BATTERY,
    /** Rotating generator. */
    GENERATOR,
    /** Motor. */
    MOTOR,
    /** Solar panel. */
    SOLAR,
    /** Open contact. */
    CONTACT_OPEN,
    /** Closed contact. */
    CONTACT_CLOSED,
    /** Coil of a relay. */
    COIL,
    /** Lamp. */
    LAMP,
    /** Heater. */
    HEATER,
    /** Cooler. */
    COOLER,
    /** Converter of direct current into alternating current. */
    INVERTER,
    /** Converter of direct current into direct current. */
    CONVERTER,
    /** Rectifier from the mains. */
    RECTIFIER,
    /** Radio. */
    RADIO,
    /** Socket. */
    SOCKET,
    /** Sensor or instrument that reports. */
    SENSOR,
    /** Screen. */
    SCREEN,
    /** Controller or computer. */
    CONTROLLER,
    /** Measuring instrument. */
    METER,
    /** Anything else that takes current. */
    LOAD,
    /** Measuring resistor. */
    SHUNT,
    /** Diode. */
    DIODE,
    /** Plug and socket in a conductor. */
    CONNECTOR,
    /** Joint of conductors. */
    JUNCTION,
    /** Distribution point, seen as a whole. */
    BOX,
    /** Frame of the vehicle. */
    FRAME,
    /** Earth point on the structure. */
    EARTH_POINT,
    /** Terminal. */
    TERMINAL
}
