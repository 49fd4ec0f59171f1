// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import java.util.Arrays;
import java.util.List;

/**
 * What the workbench was asked for at its start.
 *
 * @param demo bring in the demo fleet when it is not there yet, and open its first vehicle
 * @param time say how long the start took, then end
 */
public record StartOptions(boolean demo, boolean time) {
    /** Bring in the demo fleet. */
    public static final String DEMO = "--demo";
    /** Measure the start. */
    public static final String TIME = "--time";

    /** Reads the arguments of the application; what belongs to the platform is left alone. */
    public static StartOptions of(String... arguments) {
        List<String> given = Arrays.asList(arguments);
        return new StartOptions(given.contains(DEMO), given.contains(TIME));
    }
}
