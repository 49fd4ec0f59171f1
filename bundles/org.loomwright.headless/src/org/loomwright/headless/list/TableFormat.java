// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.list;

import org.loomwright.headless.EnumWord;

/** Forms in which lists are written. */
enum TableFormat {
    TEXT, CSV, XLSX, JSON;

    /** Reads the word for a form. */
    static final class Word extends EnumWord<TableFormat> {
        Word() {
            super(TableFormat.class);
        }
    }
}
