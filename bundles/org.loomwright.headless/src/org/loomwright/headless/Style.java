// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import org.loomwright.engine.result.Severity;

/** Weights and colours on a terminal; plain text elsewhere. Every colour is doubled by a word. */
public final class Style {
    private final boolean on;

    /** A style that is switched on or off. */
    public Style(boolean on) {
        this.on = on;
    }

    /** Strong text. */
    public String strong(String text) {
        return wrap("1", text);
    }

    /** Text of less weight. */
    public String faint(String text) {
        return wrap("2", text);
    }

    /** The word for a severity. */
    public String severity(Severity severity, String text) {
        return switch (severity) {
            case ERROR -> wrap("1;38;5;166", text);
            case WARNING -> wrap("1;38;5;178", text);
            case NOTE -> wrap("1", text);
        };
    }

    private String wrap(String code, String text) {
        return on ? "\u001b[" + code + "m" + text + "\u001b[0m" : text;
    }
}
