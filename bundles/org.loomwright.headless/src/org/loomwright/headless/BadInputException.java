// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

/** The person's input cannot be used; the message is for the person. */
public final class BadInputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** With a message that says what, where, and what was expected. */
    public BadInputException(String message) {
        super(message);
    }
}
