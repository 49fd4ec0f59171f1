// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.scene.WrappedText;

/**
 * The forms in which the devices of one seat can be drawn: a single device as its outline to scale, or a small plate where that
 * is smaller, with designation and name beside it; several as an enlarged tray with a cell and a designation each.
 */
final class SeatForms {
    /** Least plate around a symbol, px. */
    static final double PLATE_W = 42;
    static final double PLATE_H = 34;
    private static final double TEXT_PX = 12;
    private static final double LINE_PX = 15;
    private static final double CELL_H = 59;
    /** From the lower edge of a cell to the base line of its designation; a strip of an overlay lies below it, px. */
    private static final double BASE_UP = 9;
    private static final double SYMBOL_DOWN = 21;
    private static final double PAD = 6;
    /** Least room for the name of a place, px. */
    private static final double HEAD_PX = 110;
    /** Room for a badge beside a symbol, px. */
    private static final double BADGE_PX = 18;
    private static final int LONGEST_NAME = 30;
    private final PlanContent content;
    private final TextMeasure type;
    private final double pxPerMm;
    private final Set<String> badged;

    /**
     * Forms for the devices of a plan.
     *
     * @param badged ids of the devices whose plates want room for a badge
     */
    SeatForms(PlanContent content, TextMeasure type, double pxPerMm, Set<String> badged) {
        this.badged = badged;
        this.content = content;
        this.type = type;
        this.pxPerMm = pxPerMm;
    }

    /** All forms of a seat, the most wanted first. */
    List<SeatForm> of(List<Integer> devices, int place) {
        if (devices.size() == 1) {
            return single(devices.get(0));
        }
        int n = devices.size();
        int square = (int) StrictMath.ceil(StrictMath.sqrt(n));
        int wide = n <= 4 ? n : (int) StrictMath.ceil(n / StrictMath.max(1, StrictMath.floor(StrictMath.sqrt(n / 2.0))));
        String name = place < 0 ? "" : content.places().get(place).name();
        List<SeatForm> forms = new ArrayList<>();
        forms.add(tray(devices, wide, name, 0));
        if (square != wide) {
            forms.add(tray(devices, square, name, 4));
        }
        int tall = StrictMath.max(1, (n + wide - 1) / wide);
        if (tall != wide && tall != square) {
            forms.add(tray(devices, tall, name, 12));
        }
        return forms;
    }

    private SeatForm tray(List<Integer> devices, int columns, String name, double cost) {
        double cell = PLATE_W + 4;
        for (int device : devices) {
            cell = StrictMath.max(cell, PLATE_W + 4 + (badged(device) ? BADGE_PX - 4 : 0));
            cell = StrictMath.max(cell, width(designation(device), true) + 10);
        }
        int rows = (devices.size() + columns - 1) / columns;
        List<String> head = name.isEmpty() ? List.of() : wrapped(name, StrictMath.max(HEAD_PX, columns * cell));
        double w = columns * cell + 2 * PAD;
        for (String line : head) {
            w = StrictMath.max(w, width(line, false) + 2 * PAD + 4);
        }
        double headH = head.size() * LINE_PX + (head.isEmpty() ? 0 : 2);
        double h = rows * CELL_H + headH + 4;
        Bounds plate = new Bounds(-w / 2, -h / 2, w / 2, h / 2);
        List<SeatForm.Text> texts = new ArrayList<>();
        for (int i = 0; i < head.size(); i++) {
            texts.add(text(-1, -w / 2 + PAD + 2, -h / 2 + LINE_PX * (i + 1), head.get(i), false, Anchor.START, Role.INK2));
        }
        List<SeatForm.Cell> cells = new ArrayList<>();
        for (int i = 0; i < devices.size(); i++) {
            double x = -columns * cell / 2 + (i % columns + 0.5) * cell;
            double y = -h / 2 + headH + 2 + (i / columns) * CELL_H;
            int device = devices.get(i);
            cells.add(new SeatForm.Cell(device, new Point(badged(device) ? x - BADGE_PX / 2 : x, y + SYMBOL_DOWN),
                    new Bounds(x - cell / 2 + 1, y, x + cell / 2 - 1, y + CELL_H)));
            texts.add(text(device, x, y + CELL_H - BASE_UP, designation(device), true, Anchor.MIDDLE, tone(device)));
        }
        return new SeatForm(plate, plate, cells, texts, cost);
    }

    private List<SeatForm> single(int index) {
        PlanContent.Device device = content.devices().get(index);
        double w = StrictMath.max(PLATE_W + (badged(index) ? BADGE_PX : 0), device.alongMm() * pxPerMm);
        double h = StrictMath.max(PLATE_H, device.upMm() * pxPerMm);
        Bounds plate = new Bounds(-w / 2, -h / 2, w / 2, h / 2);
        SeatForm.Cell cell = new SeatForm.Cell(index, new Point(badged(index) ? -BADGE_PX / 2 : 0, 0), plate);
        String code = designation(index);
        List<SeatForm> forms = new ArrayList<>();
        String name = device.label();
        if (!name.isBlank()) {
            for (int lines = 1; lines <= 2; lines++) {
                List<String> words = lines == 1 ? List.of(name) : wrapped(name, StrictMath.max(90, width(name, false) / 2 + 20));
                if (lines == 1 && name.length() > LONGEST_NAME || lines == 2 && words.size() < 2) {
                    continue;
                }
                forms.add(beside(index, plate, cell, code, words, 1, lines));
                forms.add(beside(index, plate, cell, code, words, -1, lines));
                forms.add(stacked(index, plate, cell, code, words, 1, lines + 1));
                forms.add(stacked(index, plate, cell, code, words, -1, lines + 1));
            }
        }
        double without = name.isBlank() ? 0 : 45;
        forms.add(beside(index, plate, cell, code, List.of(), 1, without));
        forms.add(beside(index, plate, cell, code, List.of(), -1, without));
        forms.add(stacked(index, plate, cell, code, List.of(), 1, without));
        forms.add(stacked(index, plate, cell, code, List.of(), -1, without));
        return forms;
    }

    private SeatForm beside(int index, Bounds plate, SeatForm.Cell cell, String code, List<String> words, int side,
            double cost) {
        double x = side > 0 ? plate.right() + PAD : plate.left() - PAD;
        Anchor anchor = side > 0 ? Anchor.START : Anchor.END;
        double y = -(words.size() + 1) * LINE_PX / 2 + TEXT_PX - 1;
        List<SeatForm.Text> texts = new ArrayList<>();
        texts.add(text(index, x, y, code, true, anchor, tone(index)));
        for (int i = 0; i < words.size(); i++) {
            texts.add(text(index, x, y + (i + 1) * LINE_PX, words.get(i), false, anchor, Role.INK2));
        }
        return form(plate, cell, texts, cost);
    }

    private SeatForm stacked(int index, Bounds plate, SeatForm.Cell cell, String code, List<String> words, int side,
            double cost) {
        double y = side > 0 ? plate.bottom() + TEXT_PX + 3 : plate.top() - 6 - words.size() * LINE_PX;
        List<SeatForm.Text> texts = new ArrayList<>();
        texts.add(text(index, 0, y, code, true, Anchor.MIDDLE, tone(index)));
        for (int i = 0; i < words.size(); i++) {
            texts.add(text(index, 0, y + (i + 1) * LINE_PX, words.get(i), false, Anchor.MIDDLE, Role.INK2));
        }
        return form(plate, cell, texts, cost);
    }

    private SeatForm form(Bounds plate, SeatForm.Cell cell, List<SeatForm.Text> texts, double cost) {
        Bounds all = plate;
        for (SeatForm.Text text : texts) {
            all = all.with(type.bounds(text.mark()));
        }
        return new SeatForm(all.grown(3), plate, List.of(cell), texts, cost);
    }

    private List<String> wrapped(String name, double widthPx) {
        return WrappedText.of(type, name, TEXT_PX, false, widthPx);
    }

    private boolean badged(int device) {
        return badged.contains(content.devices().get(device).id());
    }

    private String designation(int device) {
        return "-" + content.devices().get(device).designation();
    }

    private Role tone(int device) {
        return content.devices().get(device).existing() ? Role.INK2 : Role.INK;
    }

    private double width(String text, boolean bold) {
        return type.widthPx(text, TEXT_PX, bold);
    }

    private static SeatForm.Text text(int device, double x, double y, String words, boolean bold, Anchor anchor, Role tone) {
        return new SeatForm.Text(device, new Mark.Text(new Point(x, y), words, TEXT_PX, bold, anchor, tone));
    }
}
