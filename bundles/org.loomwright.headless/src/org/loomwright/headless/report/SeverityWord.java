// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.report;

import org.loomwright.engine.result.Severity;
import org.loomwright.headless.EnumWord;

/** The word of a severity on the command line. */
public final class SeverityWord extends EnumWord<Severity> {
    public SeverityWord() {
        super(Severity.class);
    }
}
