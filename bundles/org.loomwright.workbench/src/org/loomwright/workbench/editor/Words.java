// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** Texts of the editor, its drawings and the views beside it, from {@code words.properties}. */
public final class Words {
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("org.loomwright.workbench.editor.words",
            Locale.getDefault(), Words.class.getClassLoader());

    private Words() {
    }

    /**
     * A text.
     *
     * @param key    its key
     * @param values what stands in its gaps
     * @throws java.util.MissingResourceException when there is none
     */
    public static String of(String key, Object... values) {
        String text = BUNDLE.getString(key);
        return values.length == 0 ? text : MessageFormat.format(text, values);
    }

    /** True when there is such a text. */
    public static boolean has(String key) {
        return BUNDLE.containsKey(key);
    }
}
