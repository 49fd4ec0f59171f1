// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

/** Tells, start tag by start tag in document order, where each was written. */
interface TagPositions {
    /** Place of the next start tag's first character in the text. */
    int next();
}
