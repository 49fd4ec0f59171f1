// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.List;

/** A closed outline in mm, as vehicle files write it: {@code 'x,y x,y ...'}. */
public record Outline(List<Spot> spots) {
    private static final int SAMPLES = 24;

    public Outline {
        spots = List.copyOf(spots);
    }

    /** Reads an outline; null when there is none, or when what is written there is no outline (the file's rules say so). */
    public static Outline read(String text) {
        if (text == null || text.isBlank()) {
            return null;
        }
        List<Spot> spots = new ArrayList<>();
        for (String pair : text.strip().split("\\s+")) {
            String[] numbers = pair.split(",");
            if (numbers.length != 2) {
                return null;
            }
            try {
                spots.add(new Spot(Double.parseDouble(numbers[0]), Double.parseDouble(numbers[1])));
            } catch (NumberFormatException noNumber) {
                return null;
            }
        }
        return spots.size() < 3 ? null : new Outline(spots);
    }

    static Outline rectangle(double rear, double low, double front, double high) {
        return new Outline(List.of(new Spot(rear, low), new Spot(rear, high), new Spot(front, high), new Spot(front, low)));
    }

    double rear() {
        return spots.stream().mapToDouble(Spot::alongMm).min().orElseThrow();
    }

    double front() {
        return spots.stream().mapToDouble(Spot::alongMm).max().orElseThrow();
    }

    double low() {
        return spots.stream().mapToDouble(Spot::upMm).min().orElseThrow();
    }

    double high() {
        return spots.stream().mapToDouble(Spot::upMm).max().orElseThrow();
    }

    /** Area, mm2. */
    public double area() {
        double twice = 0;
        for (int i = 0; i < spots.size(); i++) {
            Spot a = spots.get(i);
            Spot b = spots.get((i + 1) % spots.size());
            twice += a.alongMm() * b.upMm() - b.alongMm() * a.upMm();
        }
        return StrictMath.abs(twice) / 2;
    }

    /** True when a spot lies inside. */
    public boolean holds(Spot spot) {
        boolean inside = false;
        for (int i = 0, j = spots.size() - 1; i < spots.size(); j = i++) {
            Spot a = spots.get(i);
            Spot b = spots.get(j);
            if (a.upMm() > spot.upMm() != b.upMm() > spot.upMm() && spot.alongMm() < (b.alongMm() - a.alongMm())
                    * (spot.upMm() - a.upMm()) / (b.upMm() - a.upMm()) + a.alongMm()) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Share of this outline's area that another one covers, 0 to 1, as found on a grid of samples. */
    double coveredBy(Outline other) {
        int own = 0;
        int both = 0;
        for (int i = 0; i < SAMPLES; i++) {
            for (int j = 0; j < SAMPLES; j++) {
                Spot spot = new Spot(rear() + (i + 0.5) / SAMPLES * (front() - rear()),
                        low() + (j + 0.5) / SAMPLES * (high() - low()));
                if (holds(spot)) {
                    own++;
                    both += other.holds(spot) ? 1 : 0;
                }
            }
        }
        return own == 0 ? 0 : (double) both / own;
    }
}
