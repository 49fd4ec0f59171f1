// SPDX-License-Identifier: EPL-2.0
package org.loomwright.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.check.RuleCatalogue;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;
import org.loomwright.headless.check.CheckedVehicle;

/** The check finds every deliberate mistake of the demo fleet, and nothing else in any arrangement. */
class DeliberateMistakesTest {
    private static final String HEAD = "vehicle,arrangement,rule,element,severity";
    private static List<CheckedVehicle> checked;
    private static Set<String> expected;

    @BeforeAll
    static void checkTheFleet() {
        List<String> lines = Fleet.text(Fleet.FOLDER.resolve("expected.csv")).lines().toList();
        assertEquals(HEAD, lines.get(0));
        expected = new TreeSet<>(lines.subList(1, lines.size()));
        assertEquals(lines.size() - 1, expected.size(), "a line is there twice");
        checked = Fleet.checked();
    }

    private static String row(CheckedVehicle vehicle, Finding finding) {
        return String.join(",", vehicle.plan().vehicle(), vehicle.plan().arrangement(), finding.rule(), finding.element(),
                finding.severity().slug());
    }

    @Test
    void everyMistakeIsFoundAndNothingElse() {
        Set<String> found = new TreeSet<>();
        List<String> unexpected = new ArrayList<>();
        for (CheckedVehicle vehicle : checked) {
            for (Finding finding : vehicle.standing(Severity.WARNING)) {
                String row = row(vehicle, finding);
                found.add(row);
                if (!expected.contains(row)) {
                    unexpected.add(row + "\n      " + finding.title() + (finding.caseName() == null ? "" : " (case "
                            + finding.caseName() + ")"));
                }
            }
        }
        Set<String> missing = new TreeSet<>(expected);
        missing.removeAll(found);
        assertTrue(missing.isEmpty() && unexpected.isEmpty(), () -> "\n  expected, but not found: " + missing.size() + "\n    "
                + String.join("\n    ", missing) + "\n  found, but not expected: " + unexpected.size() + " " + byRule(unexpected) + "\n    "
                + String.join("\n    ", unexpected) + "\n");
    }

    private static Map<String, Integer> byRule(List<String> rows) {
        Map<String, Integer> counts = new TreeMap<>();
        rows.forEach(row -> counts.merge(row.split(",")[2], 1, Integer::sum));
        return counts;
    }

    @Test
    void noMistakeIsFoundTwice() {
        for (CheckedVehicle vehicle : checked) {
            List<String> rows = vehicle.standing(Severity.WARNING).stream().map(finding -> row(vehicle, finding)).sorted()
                    .toList();
            assertEquals(List.copyOf(new TreeSet<>(rows)), rows);
        }
    }

    @Test
    void mistakesCoverManyRules() {
        Set<String> rules = expected.stream().map(row -> row.split(",")[2]).collect(Collectors.toCollection(TreeSet::new));
        assertTrue(rules.size() >= 15, rules.toString());
        assertTrue(RuleCatalogue.standard().slugs().containsAll(rules), rules.toString());
    }

    @Test
    void oneArrangementCarriesThemAll() {
        assertEquals(Set.of("otter,as-found"), expected.stream().map(row -> row.substring(0, row.indexOf(',', 6)))
                .collect(Collectors.toSet()));
    }

    @Test
    void everyArrangementIsLookedAt() {
        assertEquals(6, checked.size());
        assertEquals(3, checked.stream().filter(CheckedVehicle::adopted).count());
        assertTrue(checked.stream().allMatch(each -> each.result().verdicts().size() >= 20));
    }

    /** A row of the notes' table: rules, elements, what was done. */
    private record Noted(List<String> rules, List<String> elements) {
    }

    private static List<Noted> noted() {
        String notes = Fleet.text(Fleet.FOLDER.resolve("NOTES.md"));
        int begin = notes.indexOf("## otter: the mistakes");
        String section = notes.substring(begin, notes.indexOf("\n##", begin + 4));
        List<Noted> rows = new ArrayList<>();
        for (String line : section.lines().filter(each -> each.startsWith("| ")).skip(1).toList()) {
            String[] cells = line.split("\\|");
            // "B10, by W161": what comes after the word says where the cause is
            rows.add(new Noted(list(cells[1]), list(cells[2]).stream().filter(cell -> !cell.startsWith("by ")).toList()));
        }
        assertTrue(rows.size() > 15, section);
        return rows;
    }

    private static List<String> list(String cell) {
        return Arrays.stream(cell.split(",")).map(String::strip).toList();
    }

    /** The element as the notes name it: without its arrangement, a way as {@code X1 way 3}; or the device alone. */
    private static boolean names(String noted, String element) {
        String local = element.replaceFirst("^as-found/", "");
        return noted.equals(local) || noted.equals(local.replace("/", " way ")) || noted.equals(local.replaceFirst("[/.].*", ""));
    }

    @Test
    void notesListTheSameMistakes() {
        List<Noted> rows = noted();
        List<String> unlisted = expected.stream().filter(line -> {
            String[] cells = line.split(",");
            return rows.stream().noneMatch(row -> row.rules().contains(cells[2])
                    && row.elements().stream().anyMatch(element -> names(element, cells[3])));
        }).toList();
        assertEquals(List.of(), unlisted, "in expected.csv, but not in NOTES.md");
        for (Noted row : rows) {
            for (String rule : row.rules()) {
                assertTrue(row.elements().stream().anyMatch(element -> isExpected(rule, element)), rule + " of " + row);
            }
            for (String element : row.elements()) {
                assertTrue(row.rules().stream().anyMatch(rule -> isExpected(rule, element)), element + " of " + row);
            }
        }
    }

    private static boolean isExpected(String rule, String element) {
        return expected.stream().map(line -> line.split(",")).anyMatch(cells -> cells[2].equals(rule) && names(element,
                cells[3]));
    }

    @Test
    void mistakesAreMarkedAtTheirElements() {
        String otter = Fleet.text(Fleet.FOLDER.resolve("otter.vehicle"));
        assertTrue(otter.split("note=\"Mistake").length - 1 >= 15);
    }
}
