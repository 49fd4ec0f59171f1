// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.FittedText;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.engine.compare.ArrangementComparison;
import org.loomwright.engine.compare.ArrangementFigures;
import org.loomwright.engine.compare.ComparedFigure;
import org.loomwright.engine.compare.CopperDuty;
import org.loomwright.engine.compare.CopperRow;

/**
 * Arrangements of a vehicle side by side on a sheet: copper by section and by duty, price, and sums at the left, the lowest
 * voltages of the loads at the right. Nothing is told by colour.
 */
public final class ComparisonScene {
    private static final double WIDTH = 1123;
    private static final double HEIGHT = 794;
    private static final double LEFT = 40;
    private static final double MIDDLE = 520;
    private static final double SIDE = 560;
    private static final double RIGHT = 1083;
    private static final double TOP = 110;
    private static final double ROW = 20;
    private static final List<String> BANDS = List.of("up to 1", "1.5\u20132.5", "4\u20136", "10\u201316", "25 mm\u00B2 up");
    private static final double[] BAND_ENDS = {1, 2.5, 6, 16, Double.POSITIVE_INFINITY};
    private static final List<String> SUMS = List.of("conductorM", "joints", "protectors", "spareWays", "areaCm2", "massKg",
            "hottestC", "errors", "warnings");

    private final ArrangementComparison comparison;
    private final List<String> names;
    private final Type type;
    private final SceneBuilder scene;
    private final double height;

    private ComparisonScene(ArrangementComparison comparison, Type type, String title) {
        this.comparison = comparison;
        this.type = type;
        names = comparison.arrangements().stream().map(each -> each.arrangement().isEmpty() ? "as it is" : each.arrangement())
                .toList();
        height = HEIGHT + StrictMath.max(0, names.size() - 2) * 3 * StackedBars.PITCH;
        scene = new SceneBuilder(title, WIDTH, height);
    }

    /** The largest number of arrangements that a sheet shows. */
    public static int most() {
        return VoltagePanel.MOST;
    }

    /**
     * The sheet.
     *
     * @param labels labels of the arrangements; may be empty texts
     * @param state  how the arrangements were taken, in words
     * @throws IllegalArgumentException when there are more arrangements than can be told apart
     */
    public static Scene of(ArrangementComparison comparison, List<String> labels, String state, Type type) {
        int number = comparison.arrangements().size();
        if (number > VoltagePanel.MOST) {
            throw new IllegalArgumentException("a sheet shows up to " + VoltagePanel.MOST + " arrangements, not " + number);
        }
        String vehicle = comparison.arrangements().get(0).vehicle();
        String title = vehicle + ": " + number + (number == 1 ? " arrangement" : " arrangements");
        ComparisonScene sheet = new ComparisonScene(comparison, type, title);
        sheet.head(title, labels);
        double y = TOP;
        sheet.bars("Copper by section", "kg", BANDS, sheet.bySection(), y);
        y += StackedBars.height(number) + 14;
        sheet.bars("Copper, where it is", "kg", List.of("feeders", "their returns", "branches", "their returns", "other"),
                sheet.byDuty(), y);
        y += StackedBars.height(number) + 14;
        sheet.bars("Price", "library's currency", List.of("cable", "boxes", "fuses", "devices", "ends"), sheet.byPrice(), y);
        y += StackedBars.height(number) + 14;
        sheet.sums(y);
        new VoltagePanel(sheet.scene, type, SIDE, RIGHT).write(comparison, sheet.names, TOP, sheet.height - 90);
        new TitleBlock(sheet.scene, type).write(List.of(new TimeCurrentChart.Field("vehicle", vehicle),
                new TimeCurrentChart.Field("compared", String.join(", ", sheet.names)),
                new TimeCurrentChart.Field("wiring", state)), WIDTH, sheet.height);
        return sheet.scene.build();
    }

    private void head(String title, List<String> labels) {
        scene.group(null, title);
        scene.rectangle(null, Stroke.solid(Role.INK2, 1), 20, 20, WIDTH - 40, height - 40);
        scene.text(LEFT, 53, title, 20, true, Mark.Anchor.START, Role.INK);
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            parts.add(labels.get(i).isEmpty() ? names.get(i) : names.get(i) + ": " + labels.get(i));
        }
        String text = String.join(". ", parts);
        scene.text(LEFT, 73, FittedText.of(type, text, 12, false, RIGHT - LEFT), 12, false, Mark.Anchor.START, Role.INK2);
    }

    private void bars(String title, String unit, List<String> kinds, List<StackedBars.Bar> bars, double top) {
        new StackedBars(scene, type, LEFT, MIDDLE).write(title, unit, kinds, bars, top);
    }

    private List<StackedBars.Bar> bySection() {
        List<StackedBars.Bar> bars = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            Double[] kg = {0.0, 0.0, 0.0, 0.0, 0.0};
            for (CopperRow row : comparison.arrangements().get(i).copper()) {
                int band = 0;
                while (row.sectionMm2() > BAND_ENDS[band]) {
                    band++;
                }
                kg[band] += row.copperKg();
            }
            bars.add(new StackedBars.Bar(names.get(i), List.of(kg)));
        }
        return bars;
    }

    private List<StackedBars.Bar> byDuty() {
        List<StackedBars.Bar> bars = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            Map<CopperDuty, Double> kg = comparison.arrangements().get(i).copperKgByDuty();
            bars.add(new StackedBars.Bar(names.get(i), List.copyOf(kg.values())));
        }
        return bars;
    }

    private List<StackedBars.Bar> byPrice() {
        List<StackedBars.Bar> bars = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            List<Double> money = new ArrayList<>();
            for (ArrangementFigures.Priced kind : ArrangementFigures.Priced.values()) {
                money.add(comparison.arrangements().get(i).price().get(kind).known());
            }
            bars.add(new StackedBars.Bar(names.get(i), money));
        }
        return bars;
    }

    private void sums(double top) {
        scene.group(null, "In figures");
        StackedBars.PanelHead.write(scene, "In figures", "", LEFT, MIDDLE, top);
        double column = StrictMath.min(80, (MIDDLE - LEFT - 205) / names.size());
        for (int i = 0; i < names.size(); i++) {
            double x = MIDDLE - (names.size() - 1 - i) * column;
            scene.text(x, top + 8, FittedText.of(type, names.get(i), 12, true, column - 6), 12, true, Mark.Anchor.END, Role.INK);
        }
        int line = 0;
        for (ComparedFigure figure : comparison.figures()) {
            if (SUMS.contains(figure.key())) {
                double y = top + 34 + line++ * ROW;
                scene.text(LEFT, y, figure.words(), 12, false, Mark.Anchor.START, Role.INK);
                scene.text(LEFT + 165, y, unit(figure.unit()), 12, false, Mark.Anchor.START, Role.INK2);
                for (int i = 0; i < names.size(); i++) {
                    scene.text(MIDDLE - (names.size() - 1 - i) * column, y, ChartNumber.of(figure.values().get(i)), 12,
                            figure.best() == i, Mark.Anchor.END, Role.INK);
                }
            }
        }
    }

    private static String unit(String unit) {
        return switch (unit) {
            case "1", "money" -> "";
            case "cm2" -> "cm\u00B2";
            case "degC" -> "\u00B0C";
            default -> unit;
        };
    }
}
