// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.loomwright.engine.compare.ArrangementComparison;
import org.loomwright.engine.compare.ComparedFigure;
import org.loomwright.engine.result.Figures;

/** Says in sentences what an arrangement costs more or less than the first, and where. */
final class CompareSentences {
    private static final double SAID = 5e-3;
    private final ArrangementComparison comparison;
    private final List<String> names;

    CompareSentences(ArrangementComparison comparison, List<String> names) {
        this.comparison = comparison;
        this.names = names;
    }

    /** Sentences about one arrangement beside the first. */
    List<String> about(int arrangement) {
        List<String> sentences = new ArrayList<>();
        sentences.add(total("copperKg", " kg", "copper", arrangement) + parts(comparison.copperByDuty(), " kg", arrangement));
        ComparedFigure metres = figure("conductorM");
        sentences.add(names.get(arrangement) + " lays " + Figures.three(metres.values().get(arrangement)) + " m of conductor, "
                + names.get(0) + " " + Figures.three(metres.values().get(0)) + " m"
                + parts(comparison.metresBySection(), " m", arrangement));
        sentences.add(total("price", "", "in price", arrangement) + parts(comparison.figures().stream()
                .filter(each -> each.key().startsWith("price.")).toList(), "", arrangement));
        return sentences;
    }

    private ComparedFigure figure(String key) {
        return comparison.figures().stream().filter(each -> each.key().equals(key)).findFirst().orElseThrow();
    }

    private String total(String key, String unit, String what, int arrangement) {
        ComparedFigure figure = figure(key);
        double first = figure.values().get(0);
        double difference = figure.difference(arrangement);
        String share = first > 0 ? " (" + Figures.three(StrictMath.abs(100 * difference / first)) + " %)" : "";
        return names.get(arrangement) + " needs " + Figures.three(StrictMath.abs(difference)) + unit + share
                + (difference < 0 ? " less " : " more ") + what + " than " + names.get(0) + ": "
                + Figures.three(figure.values().get(arrangement)) + " against " + Figures.three(first) + unit;
    }

    /** The parts that differ, the largest difference first. */
    private String parts(List<ComparedFigure> parts, String unit, int arrangement) {
        List<String> words = parts.stream().filter(part -> StrictMath.abs(part.difference(arrangement)) > SAID)
                .sorted(Comparator.comparingDouble((ComparedFigure part) -> -StrictMath.abs(part.difference(arrangement))))
                .map(part -> word(part) + " " + (part.difference(arrangement) < 0 ? "-" : "+")
                        + Figures.three(StrictMath.abs(part.difference(arrangement))) + unit).toList();
        return words.isEmpty() ? "." : ". Of that " + String.join(", ", words) + ".";
    }

    private static String word(ComparedFigure part) {
        return part.words().replaceFirst("^price, ", "").replaceFirst("\\.0 mm2$", " mm2");
    }
}
