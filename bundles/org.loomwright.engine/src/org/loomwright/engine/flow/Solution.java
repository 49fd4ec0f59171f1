// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/**
 * Potentials and currents found for one set of states.
 *
 * @param circuit    the laws, as they were set up; valid until the circuit is set up anew
 * @param potentialV potential of each node, NaN where there is none, V
 * @param currentA   current of each item from a to b, of converters into inA, A
 * @param outputA    current a converter delivers, A
 * @param unloadedV  input voltage of each converter while nothing is drawn, V; 0 for other items
 * @param resting    demands that have voltage without load but not enough with it
 * @param found      whether the laws agree within the tolerance
 */
record Solution(Circuit circuit, double[] potentialV, double[] currentA, double[] outputA, double[] unloadedV,
        boolean[] resting, boolean found) {

    /** Voltage between two nodes; 0 where one of them has no potential. */
    double voltage(int a, int b) {
        double volt = potentialV[a] - potentialV[b];
        return Double.isNaN(volt) ? 0 : volt;
    }

    /** Whether both nodes have a potential. */
    boolean live(int a, int b) {
        return !Double.isNaN(potentialV[a]) && !Double.isNaN(potentialV[b]);
    }

    double amps(int item) {
        return currentA[item];
    }

    double unloaded(int item) {
        return unloadedV[item];
    }

    /** No solution: something rests below its floor voltage, or the laws do not agree. */
    boolean collapsed() {
        if (!found) {
            return true;
        }
        for (boolean rests : resting) {
            if (rests) {
                return true;
            }
        }
        return false;
    }
}
