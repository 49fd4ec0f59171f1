// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.report;

import org.loomwright.headless.EnumWord;

/** Forms of a report. */
public enum ReportForm {
    TEXT, JSON;

    /** Its word on the command line. */
    public static final class Word extends EnumWord<ReportForm> {
        public Word() {
            super(ReportForm.class);
        }
    }
}
