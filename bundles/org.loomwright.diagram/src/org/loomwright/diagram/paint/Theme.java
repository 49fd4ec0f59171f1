// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paint;

import java.util.EnumMap;
import java.util.Map;
import org.loomwright.diagram.scene.Role;

/**
 * Colours by role, as 0xRRGGBB. State colours are of the published set of Okabe and Ito, told apart by colour-blind people too.
 *
 * @param name   {@code light} or {@code dark}
 * @param colours colour of every role
 */
public record Theme(String name, Map<Role, Integer> colours) {
    public Theme {
        colours = Map.copyOf(colours);
        if (colours.size() != Role.values().length) {
            throw new IllegalArgumentException("a theme gives every role a colour");
        }
    }

    /** Ink on paper. */
    public static Theme light() {
        return new Theme("light", colours(0xFDFCFA, 0xFFFFFF, 0x1B1F24, 0x4A525C, 0x89919A, 0xCBD0D5, 0xB9C1C9, 0x0072B2));
    }

    /** The same drawing with inverted ground. */
    public static Theme dark() {
        return new Theme("dark", colours(0x14181D, 0x1B2027, 0xE9E7E2, 0xB3BAC2, 0x7B8590, 0x3A424B, 0x4C5763, 0x56B4E9));
    }

    /** The colour of a role. */
    public int colour(Role role) {
        return colours.get(role);
    }

    private static Map<Role, Integer> colours(int paper, int plate, int ink, int ink2, int ink3, int hair, int fill,
            int select) {
        Map<Role, Integer> map = new EnumMap<>(Role.class);
        map.put(Role.PAPER, paper);
        map.put(Role.PLATE, plate);
        map.put(Role.INK, ink);
        map.put(Role.INK2, ink2);
        map.put(Role.INK3, ink3);
        map.put(Role.HAIR, hair);
        map.put(Role.FILL, fill);
        map.put(Role.ERROR, 0xD55E00);
        map.put(Role.WARNING, 0xE69F00);
        map.put(Role.OK, 0x009E73);
        map.put(Role.SELECT, select);
        map.put(Role.WHAT_IF, 0xCC79A7);
        return map;
    }
}
