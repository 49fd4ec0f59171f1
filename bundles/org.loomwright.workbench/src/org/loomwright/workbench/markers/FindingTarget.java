// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.markers;

/** What shows findings on elements and can mend them: an editor that adapts to this. */
public interface FindingTarget {
    /** Shows the element of a finding and selects it. */
    void reveal(FindingKey finding);

    /**
     * Applies a proposal to the model as one step that can be undone. Nothing is saved.
     *
     * @param mend text of the proposal as the finding gives it
     * @return false when the finding or the proposal is not there any more
     */
    boolean mend(FindingKey finding, String mend);
}
