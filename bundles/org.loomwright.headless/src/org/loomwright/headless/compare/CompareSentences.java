// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.compare.ArrangementComparison;
import org.loomwright.engine.compare.ComparedFigure;
import org.loomwright.engine.compare.CopperDuty;
import org.loomwright.engine.result.Figures;

/** Says in sentences what an arrangement costs more or less than the first, and where. */
final class CompareSentences {
    private static final double SAID = 5e-3;
    /** Parts of a difference that are named; the others are in the tables. */
    private static final int NAMED = 4;
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
        sentences.add(ways(arrangement));
        ComparedFigure metres = figure("conductorM");
        sentences.add(names.get(arrangement) + " lays " + Figures.three(metres.values().get(arrangement)) + " m of conductor, "
                + names.get(0) + " " + Figures.three(metres.values().get(0)) + " m"
                + parts(comparison.metresBySection(), " m", arrangement));
        sentences.add(total("price", "", "in price", arrangement) + parts(comparison.figures().stream()
                .filter(each -> each.key().startsWith("price.")).toList(), "", arrangement));
        return sentences;
    }

    /** How much of the conductor serves one load, and how much several. */
    private String ways(int arrangement) {
        double[] branchesM = new double[2];
        double[] feedersM = new double[2];
        for (int i = 0; i < 2; i++) {
            Map<CopperDuty, Double> metres = comparison.arrangements().get(i == 0 ? 0 : arrangement).metresByDuty();
            branchesM[i] = metres.get(CopperDuty.BRANCH) + metres.get(CopperDuty.BRANCH_RETURN);
            feedersM[i] = metres.get(CopperDuty.FEEDER) + metres.get(CopperDuty.FEEDER_RETURN);
        }
        String why = branchesM[1] < branchesM[0] && feedersM[1] > feedersM[0]
                ? " It leads several loads together over the long way and parts them near where they are."
                : branchesM[1] > branchesM[0] && feedersM[1] < feedersM[0]
                ? " It leads each load by itself over more of the way." : "";
        return names.get(arrangement) + " has " + Figures.three(branchesM[1]) + " m of branches, each for one load, and "
                + Figures.three(feedersM[1]) + " m of feeders, shared by several; " + names.get(0) + " "
                + Figures.three(branchesM[0]) + " m and " + Figures.three(feedersM[0]) + " m." + why;
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
        int more = words.size() - NAMED;
        // one more is named as shortly as it is told
        int named = more <= 1 ? words.size() : NAMED;
        return words.isEmpty() ? "." : ". Of that " + String.join(", ", words.subList(0, named))
                + (named < words.size() ? ", and " + more + " lesser differences" : "") + ".";
    }

    private static String word(ComparedFigure part) {
        return part.words().replaceFirst("^price, ", "").replaceFirst("\\.0 mm2$", " mm2");
    }
}
