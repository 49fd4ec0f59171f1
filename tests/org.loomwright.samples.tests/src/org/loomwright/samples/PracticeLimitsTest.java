// SPDX-License-Identifier: EPL-2.0
package org.loomwright.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.check.Rule;
import org.loomwright.engine.check.RuleCatalogue;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.practice.Practice;

/** The common practice holds what the studies read, and nothing that no study knows. */
class PracticeLimitsTest {
    /** Limits of studies that are not there yet; a limit leaves this list with its study. */
    private static final Set<String> LATER = Set.of("endurance.depth-lead", "endurance.depth-lithium", "endurance.start-reserve",
            "fill.closed", "fill.openable", "spare.ways");
    private static final Path ENGINE = Path.of("..", "..", "bundles", "org.loomwright.engine", "src");
    private static Set<String> limits;
    private static Set<String> choices;
    private static String engine;

    @BeforeAll
    static void read() throws IOException {
        Practice common = new VehicleFiles().commonPractice();
        limits = common.getLimits().stream().map(limit -> limit.getName()).collect(Collectors.toCollection(TreeSet::new));
        choices = common.getChoices().stream().map(choice -> choice.getName()).collect(Collectors.toCollection(TreeSet::new));
        StringBuilder text = new StringBuilder();
        try (Stream<Path> files = Files.walk(ENGINE)) {
            for (Path file : files.filter(each -> each.toString().endsWith(".java")).sorted().toList()) {
                text.append(Files.readString(file));
            }
        }
        engine = text.toString();
    }

    private static Set<String> readByRules() {
        return RuleCatalogue.standard().rules().stream().map(Rule::limits).flatMap(list -> list.stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean inEngine(String limit) {
        return engine.contains("\"" + limit + "\"");
    }

    @Test
    void everyLimitIsReadByARuleOrByTheEngineOrIsForALaterStudy() {
        Set<String> unread = new TreeSet<>(limits);
        unread.removeAll(readByRules());
        unread.removeIf(PracticeLimitsTest::inEngine);
        assertEquals(new TreeSet<>(LATER), unread);
    }

    @Test
    void everythingThatRulesReadIsInTheCommonPractice() {
        Set<String> unknown = readByRules();
        assertTrue(unknown.size() > 20);
        unknown.removeAll(limits);
        unknown.removeAll(choices);
        assertEquals(Set.of(), unknown);
    }

    @Test
    void rulesNameTheLimitsThatTheyRead() {
        for (Rule rule : RuleCatalogue.standard().rules()) {
            Set<String> own = limits.stream().filter(limit -> limit.startsWith(rule.slug() + "."))
                    .filter(PracticeLimitsTest::inEngine)
                    .collect(Collectors.toCollection(TreeSet::new));
            own.removeAll(rule.limits());
            assertEquals(Set.of(), own, rule.slug() + " reads limits that it does not name");
        }
    }

    @Test
    void rulesSayWhatMustHold() {
        for (Rule rule : RuleCatalogue.standard().rules()) {
            assertTrue(rule.says().length() > 20 && !rule.says().contains("\n"), rule.slug());
        }
    }
}
