// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.OptionalDouble;
import org.loomwright.diagram.symbol.Badge;

/** What the studies said of the elements of a line diagram, in the case that is drawn. */
interface LineFigures {
    /** Nothing was studied yet. */
    LineFigures NONE = new LineFigures() {
    };

    /** True when a case is drawn, so that what carries nothing is shown as off. */
    default boolean live() {
        return false;
    }

    /** Current of a cable, A. */
    default OptionalDouble cableA(String cableId) {
        return OptionalDouble.empty();
    }

    /** Drop along a cable, mV. */
    default OptionalDouble cableMillivolts(String cableId) {
        return OptionalDouble.empty();
    }

    /** True when findings are known: then room is kept for their marks, so that nothing moves when one comes or goes. */
    default boolean studied() {
        return false;
    }

    /** Temperature of a cable's warmest core, degrees Celsius. */
    default OptionalDouble cableC(String cableId) {
        return OptionalDouble.empty();
    }

    /** Current of a wire from its end a to its end b, A. */
    default OptionalDouble wireA(Wire wire) {
        return OptionalDouble.empty();
    }

    /** Current that a source gives, A; negative while it takes. */
    default OptionalDouble sourceA(String deviceId) {
        return OptionalDouble.empty();
    }

    /** True when a load is on in the case; one that waits is not. */
    default boolean loadOn(String loadId) {
        return false;
    }

    /** Standby current of what is not on in a device, A. */
    default double waitingA(String deviceId) {
        return 0;
    }

    /** True when a contact is closed. */
    default boolean closed(String contactId) {
        return false;
    }

    /** Length of a cable, mm. */
    default OptionalDouble lengthMm(String cableId) {
        return OptionalDouble.empty();
    }

    /** Potential of a terminal, V. */
    default OptionalDouble terminalV(String terminalId) {
        return OptionalDouble.empty();
    }

    /** Voltage at a load, V. */
    default OptionalDouble loadV(String deviceId) {
        return OptionalDouble.empty();
    }

    /** Current of a load, A. */
    default OptionalDouble loadA(String deviceId) {
        return OptionalDouble.empty();
    }

    /** Drop of a load as a share of the nominal voltage, %. */
    default OptionalDouble loadDropPercent(String deviceId) {
        return OptionalDouble.empty();
    }

    /** Badge of an element; null without a finding. */
    default Badge badge(String elementId) {
        return null;
    }

    /** Number of findings of an element. */
    default int count(String elementId) {
        return 0;
    }
}
