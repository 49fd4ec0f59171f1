// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

/**
 * Walks the tags of a well-formed XML text in step with the parser, which itself only tells where a tag ends.
 * On a text that is not well-formed it stops at the end of the text.
 */
final class TagScanner implements TagPositions {
    private final String text;
    private int position;
    private int rootStart = -1;
    private int lastTagEnd;
    private boolean commentInside;
    private boolean commentPending;

    TagScanner(String text) {
        this.text = text;
    }

    @Override
    public int next() {
        while (true) {
            int open = text.indexOf('<', position);
            if (open < 0) {
                position = text.length();
                return lastTagEnd;
            }
            char kind = open + 1 < text.length() ? text.charAt(open + 1) : ' ';
            if (kind == '!' || kind == '?') {
                skipOther(open, kind);
            } else {
                closeTag(open, kind != '/');
                if (kind != '/') {
                    return open;
                }
            }
        }
    }

    /** Goes to the end of the text, after the last start tag was taken. */
    void finish() {
        while (position < text.length()) {
            next();
        }
    }

    /** Place of the root's start tag; -1 before it was taken. */
    int rootStart() {
        return rootStart;
    }

    /** Place after the last tag; after {@link #finish()} that is where the root element ends. */
    int lastTagEnd() {
        return lastTagEnd;
    }

    /** True when there are comments or processing instructions within the root element. */
    boolean commentInside() {
        return commentInside;
    }

    private void skipOther(int open, char kind) {
        boolean comment = text.startsWith("<!--", open);
        String end = kind == '?' ? "?>" : text.startsWith("<![CDATA[", open) ? "]]>" : comment ? "-->" : ">";
        int from = comment ? open + 4 : open + 2;
        int close = text.indexOf(end, from);
        position = close < 0 ? text.length() : close + end.length();
        commentPending |= rootStart >= 0 && !"]]>".equals(end);
    }

    private void closeTag(int open, boolean start) {
        if (rootStart < 0 && start) {
            rootStart = open;
        }
        commentInside |= commentPending;
        int i = open + 1;
        char quote = 0;
        for (; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '>') {
                break;
            }
        }
        position = Math.min(text.length(), i + 1);
        lastTagEnd = position;
    }

    /**
     * Place of an attribute in a start tag.
     *
     * @param tag  place of the tag's first character
     * @param name the attribute as written
     * @return place of the attribute's name; of the tag when it has no such attribute
     */
    static int attribute(String text, int tag, String name) {
        int i = tag + 1;
        while (i < text.length() && text.charAt(i) != '>') {
            char c = text.charAt(i);
            if (c == '"' || c == '\'') {
                int close = text.indexOf(c, i + 1);
                i = close < 0 ? text.length() : close + 1;
            } else if (Character.isWhitespace(c) && text.startsWith(name, i + 1) && endsName(text, i + 1 + name.length())) {
                return i + 1;
            } else {
                i++;
            }
        }
        return tag;
    }

    private static boolean endsName(String text, int at) {
        return at < text.length() && (text.charAt(at) == '=' || Character.isWhitespace(text.charAt(at)));
    }
}
