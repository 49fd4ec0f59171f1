// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.math.BigDecimal;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.parts.Named;
import org.loomwright.model.parts.TerminalSpec;

/**
 * One device while its elements are put in: terminals, values as set on the device, and where the elements go. An element with a
 * value that cannot do without is reported and left out.
 */
final class ElementSite {
    private final int device;
    private final String deviceId;
    private final DeviceSettings settings;
    private final TerminalTable terminals;
    private final AssemblyScope scope;
    private final List<Plan.Element> elements;
    private final Map<Named, Integer> indexes = new IdentityHashMap<>();
    private Named element;
    private boolean complete;

    ElementSite(int device, String deviceId, DeviceSettings settings, TerminalTable terminals, AssemblyScope scope,
            List<Plan.Element> elements) {
        this.device = device;
        this.deviceId = deviceId;
        this.settings = settings;
        this.terminals = terminals;
        this.scope = scope;
        this.elements = elements;
    }

    /** Index of the device. */
    int device() {
        return device;
    }

    /** What the assembly works with. */
    AssemblyScope scope() {
        return scope;
    }

    /** Starts the next element. */
    String begin(Named next) {
        element = next;
        complete = true;
        return id(next);
    }

    /** Puts the element in, unless something that it needs is missing. */
    void end(java.util.function.Supplier<Plan.Element> made) {
        if (complete) {
            indexes.put(element, elements.size());
            elements.add(made.get());
        }
    }

    /** Id of an element of this device. */
    String id(Named of) {
        return deviceId + "#" + of.getName();
    }

    /** Index of an element of this device that is already in, or -1. */
    int indexOf(Named other) {
        return other == null ? -1 : indexes.getOrDefault(other, -1);
    }

    /** Tells of a problem of the element; it stays in. */
    void problem(String message) {
        scope.problems().add(id(element), message);
    }

    /** Tells of a problem of the element and leaves it out. */
    void leaveOut(String message) {
        problem(message);
        complete = false;
    }

    /** A terminal that the element needs. */
    int terminal(TerminalSpec spec, String which) {
        int terminal = terminals.of(device, spec);
        if (terminal < 0) {
            leaveOut("the element names no terminal of its own part as " + which);
        }
        return terminal;
    }

    /** A terminal that the element can do without, or -1. */
    int optionalTerminal(TerminalSpec spec) {
        return terminals.of(device, spec);
    }

    /** A value, or NaN when not stated. */
    double number(String quantity, BigDecimal stated) {
        return Decimals.of(value(quantity, stated));
    }

    /** A value, or another one when not stated. */
    double number(String quantity, BigDecimal stated, double otherwise) {
        return Decimals.or(value(quantity, stated), otherwise);
    }

    /** A value that the element cannot do without. */
    double needed(String quantity, BigDecimal stated) {
        double value = number(quantity, stated);
        if (Double.isNaN(value)) {
            leaveOut("the part states no " + quantity);
        }
        return value;
    }

    /** A resistance above 0 that the element cannot do without, given in milliohm, as ohm. */
    double neededOhm(BigDecimal stated) {
        double ohm = Decimals.thousandth(value("milliohm", stated));
        if (Double.isNaN(ohm) || ohm <= 0) {
            leaveOut("the part states no resistance; expected milliohm above 0");
        }
        return ohm;
    }

    /** A resistance given in milliohm, as ohm; that of the practice's limit when the part states none. */
    double ohm(String quantity, BigDecimal stated, String limit) {
        double ohm = Decimals.thousandth(value(quantity, stated));
        if (ohm > 0) {
            return ohm;
        }
        if (!Double.isNaN(ohm)) {
            problem(quantity + " is not above 0; " + limit + " of the practice stands in");
        }
        return scope.ohms(limit);
    }

    /** The value set on the device, or that of the part. */
    BigDecimal value(String quantity, BigDecimal stated) {
        return settings.value(element.getName(), quantity, stated);
    }

    /** True when the device sets this value itself. */
    boolean sets(String quantity) {
        return settings.sets(element.getName(), quantity);
    }
}
