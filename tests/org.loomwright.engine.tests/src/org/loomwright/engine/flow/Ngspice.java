// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Runs ngspice in batch mode. It has to be there: without it the comparison fails, it is not left out. */
final class Ngspice {
    private static final Pattern VALUE = Pattern.compile("(?m)^\\s*v?\\(?(n[a-z0-9]+)\\)?\\s*=\\s*(\\S+)\\s*$");

    private Ngspice() {
    }

    static String prefix(int k) {
        return "x" + k + "y";
    }

    /** Potentials of several networks, solved as one deck of separate circuits. */
    static Map<String, Double> potentials(List<OperatingPoint> points, FlowOptions options) {
        StringBuilder deck = new StringBuilder("* several networks\n");
        for (int k = 0; k < points.size(); k++) {
            deck.append(SpiceNetlist.circuit(points.get(k), options, prefix(k)));
        }
        deck.append(".options reltol=1e-10 abstol=1e-10 vntol=1e-10 itl1=2000\n")
                .append(".control\nset numdgt=15\nset width=200\nop\nprint allv\n.endc\n.end\n");
        String out = run(deck.toString());
        Map<String, Double> result = new HashMap<>();
        Matcher matcher = VALUE.matcher(out);
        while (matcher.find()) {
            result.put(matcher.group(1), Double.parseDouble(matcher.group(2)));
        }
        if (result.isEmpty()) {
            throw new AssertionError("ngspice printed no potentials:\n" + out);
        }
        return result;
    }

    /** A potential printed by a .print line of a deck. */
    static double printed(String out, String node) {
        String line = "(?mi)^\\s*(?:v\\()?" + node + "\\)?\\s*=?\\s+(-?[0-9.]+e[-+]?[0-9]+)\\s*$";
        Matcher matcher = Pattern.compile(line).matcher(out);
        if (!matcher.find()) {
            throw new AssertionError("ngspice printed nothing for " + node + ":\n" + out);
        }
        return Double.parseDouble(matcher.group(1));
    }

    /** What ngspice says to a deck. */
    static String run(String deck) {
        try {
            Path file = Files.createTempFile("network", ".cir");
            Path out = Files.createTempFile("network", ".out");
            // apart, or its notes fall into the middle of a line of figures
            Path notes = Files.createTempFile("network", ".err");
            try {
                Files.writeString(file, deck, StandardCharsets.US_ASCII);
                Process process = new ProcessBuilder("ngspice", "-b", file.toString()).redirectError(notes.toFile())
                        .redirectOutput(out.toFile()).start();
                if (!process.waitFor(60, TimeUnit.SECONDS)) {
                    process.destroyForcibly();
                    throw new AssertionError("ngspice did not end within a minute");
                }
                return Files.readString(out, StandardCharsets.ISO_8859_1)
                        + Files.readString(notes, StandardCharsets.ISO_8859_1);
            } finally {
                Files.deleteIfExists(file);
                Files.deleteIfExists(out);
                Files.deleteIfExists(notes);
            }
        } catch (IOException e) {
            throw new AssertionError("This test compares with ngspice, which could not be started (" + e.getMessage()
                    + "). Install it: apt-get install ngspice", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError("interrupted while ngspice ran", e);
        }
    }
}
