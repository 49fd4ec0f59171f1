// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.live;

import java.util.List;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.result.Finding;

/**
 * What is analysed: made in the thread that owns the model, referring to no object of it.
 *
 * @param assembled  plan and what could not be assembled
 * @param structural what cannot be meant in the model itself, as findings
 */
public record Snapshot(AssemblyResult assembled, List<Finding> structural) {
    public Snapshot {
        structural = List.copyOf(structural);
    }
}
