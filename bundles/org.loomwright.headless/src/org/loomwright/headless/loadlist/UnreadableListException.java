// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

/** A file that is no list of loads; the message is for people. */
public class UnreadableListException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** The trouble, in words. */
    public UnreadableListException(String message) {
        super(message);
    }

    /** The trouble, in words, and what caused it. */
    public UnreadableListException(String message, Throwable cause) {
        super(message, cause);
    }
}
