// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.result;

import java.util.regex.Pattern;

/**
 * Element ids as people read them: reference designations with the minus sign of IEC 81346 and terminals after the
 * colon of IEC 61666, for example {@code -X1:3} for {@code central/X1.3} and for way {@code central/X1/3}.
 *
 * @param arrangement arrangement whose prefix is left out; empty for none
 */
public record Designations(String arrangement) {
    private static final Pattern DESIGNATION = Pattern.compile("[A-Z]{1,3}[0-9]+[A-Za-z0-9_]*");

    /** The element as shown. Names that are no designations, such as those of bodies and zones, stay as they are. */
    public String shown(String id) {
        String local = !arrangement.isEmpty() && id.startsWith(arrangement + "/")
                ? id.substring(arrangement.length() + 1)
                : id;
        int hash = local.indexOf('#');
        String element = hash < 0 ? "" : " " + local.substring(hash + 1);
        String owner = hash < 0 ? local : local.substring(0, hash);
        int cut = firstOf(owner, '.', '/');
        String name = cut < 0 ? owner : owner.substring(0, cut);
        if (!DESIGNATION.matcher(name).matches()) {
            return local;
        }
        return "-" + name + (cut < 0 ? "" : ":" + owner.substring(cut + 1)) + element;
    }

    private static int firstOf(String text, char a, char b) {
        int at = text.indexOf(a);
        int other = text.indexOf(b);
        return at < 0 ? other : other < 0 ? at : StrictMath.min(at, other);
    }
}
