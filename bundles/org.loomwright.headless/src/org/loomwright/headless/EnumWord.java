// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads one of a few words of the command line and says, when it is none, which ones there are.
 *
 * @param <E> what the words stand for
 */
public class EnumWord<E extends Enum<E>> implements ITypeConverter<E> {
    private final E[] values;

    /** The words for all values of a type: their names in small letters. */
    protected EnumWord(Class<E> type) {
        values = type.getEnumConstants();
    }

    @Override
    public E convert(String text) {
        List<String> words = new ArrayList<>(Arrays.stream(values).map(value -> value.name().toLowerCase(Locale.ROOT)).toList());
        int at = words.indexOf(text.toLowerCase(Locale.ROOT));
        if (at >= 0) {
            return values[at];
        }
        String last = words.remove(words.size() - 1);
        throw new TypeConversionException("'" + text + "' is none; expected " + String.join(", ", words) + " or " + last);
    }
}
