// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paint;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.loomwright.diagram.scene.CableTone;
import org.loomwright.diagram.scene.MapTone;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Tone;
import org.loomwright.diagram.scene.Veil;

/**
 * Colours by role, as 0xRRGGBB. State colours are of the published set of Okabe and Ito, told apart by colour-blind people too.
 *
 * @param name    {@code light} or {@code dark}
 * @param colours colour of every role
 * @param map     stops of the overlay map, evenly spaced, low end first
 */
public record Theme(String name, Map<Role, Integer> colours, List<Integer> map) {
    private static final int UNKNOWN_CABLE = 0x8C8C8C;
    /** Insulation colours by the letters of IEC 60757; the shades are common practice. */
    private static final Map<String, Integer> CABLES = Map.ofEntries(Map.entry("BK", 0x222222), Map.entry("BN", 0x7A4A21),
            Map.entry("RD", 0xC62828), Map.entry("OG", 0xE97A12), Map.entry("YE", 0xF2D20C), Map.entry("GN", 0x2E8B3D),
            Map.entry("BU", 0x2458B8), Map.entry("VT", 0x7B3FA0), Map.entry("GY", 0x8C8C8C), Map.entry("WH", 0xFFFFFF),
            Map.entry("PK", 0xF0A0B8), Map.entry("TQ", 0x2AB5B5), Map.entry("GD", 0xC9A227), Map.entry("SR", 0xC7CCD1));

    public Theme {
        colours = Map.copyOf(colours);
        map = List.copyOf(map);
        if (colours.size() != Role.values().length || map.size() < 2) {
            throw new IllegalArgumentException("a theme gives every role a colour, and the overlay map two stops at least");
        }
    }

    /** Ink on paper. */
    public static Theme light() {
        Map<Role, Integer> map = states();
        map.putAll(Map.of(Role.PAPER, 0xFDFCFA, Role.PLATE, 0xFFFFFF, Role.PANEL, 0xF3F2EE, Role.INK, 0x1B1F24, Role.INK2,
                0x4A525C, Role.INK3, 0x89919A, Role.HAIR, 0xCBD0D5, Role.FILL, 0xB9C1C9, Role.BODY, 0xE9E9E6));
        map.putAll(Map.of(Role.DRY, 0xF6F4EE, Role.HOT, 0xFBEBD0, Role.WET, 0xE0F0FA, Role.SELECT, 0x0072B2, Role.WASH,
                0xD6E8F4, Role.ON_ERROR, 0xFFFFFF, Role.ON_WARNING, 0x1B1F24));
        return new Theme("light", map, List.of(0xF3DF6B, 0xBCAE6C, 0x7D7C78, 0x434E6C, 0x00224E));
    }

    /** Ink on the printer's own paper: as light, with plain white where a screen shows the ground. */
    public static Theme print() {
        Map<Role, Integer> map = new EnumMap<>(light().colours());
        map.put(Role.PAPER, 0xFFFFFF);
        return new Theme("print", map, light().map());
    }

    /** The same drawing with inverted ground. */
    public static Theme dark() {
        Map<Role, Integer> map = states();
        map.putAll(Map.of(Role.PAPER, 0x14181D, Role.PLATE, 0x1B2027, Role.PANEL, 0x1E242B, Role.INK, 0xE9E7E2, Role.INK2,
                0xB3BAC2, Role.INK3, 0x7B8590, Role.HAIR, 0x3A424B, Role.FILL, 0x4C5763, Role.BODY, 0x262C33));
        map.putAll(Map.of(Role.DRY, 0x191D22, Role.HOT, 0x2E2618, Role.WET, 0x17262F, Role.SELECT, 0x56B4E9, Role.WASH,
                0x173447, Role.ON_ERROR, 0xFFFFFF, Role.ON_WARNING, 0x14181D));
        return new Theme("dark", map, List.of(0x00306F, 0x434E6C, 0x7D7C78, 0xBCAE6C, 0xFEE838));
    }

    /** The colour of a tone, its opacity left aside. */
    public int colour(Tone tone) {
        if (tone instanceof MapTone value) {
            return onMap(value.position());
        } else if (tone instanceof CableTone cable) {
            return CABLES.getOrDefault(cable.letters(), UNKNOWN_CABLE);
        }
        return colours.get(tone instanceof Veil veil ? veil.role() : (Role) tone);
    }

    private int onMap(double position) {
        double at = position * (map.size() - 1);
        int low = (int) StrictMath.min(map.size() - 2, StrictMath.floor(at));
        double share = at - low;
        int colour = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int from = map.get(low) >> shift & 0xFF;
            int to = map.get(low + 1) >> shift & 0xFF;
            colour |= (int) StrictMath.rint(from + share * (to - from)) << shift;
        }
        return colour;
    }

    private static Map<Role, Integer> states() {
        Map<Role, Integer> map = new EnumMap<>(Role.class);
        map.put(Role.ERROR, 0xD55E00);
        map.put(Role.WARNING, 0xE69F00);
        map.put(Role.OK, 0x009E73);
        map.put(Role.WHAT_IF, 0xCC79A7);
        map.put(Role.MARK, 0xF0E442);
        return map;
    }
}
