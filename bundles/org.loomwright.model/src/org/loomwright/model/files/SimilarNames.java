// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.Collection;
import java.util.Locale;

/** Finds the name that was probably meant. */
final class SimilarNames {
    private SimilarNames() {
    }

    /** The nearest of the candidates, null when none is near; the first of equally near ones. */
    static String nearest(String wanted, Collection<String> candidates) {
        String best = null;
        int bestDistance = Math.max(1, Math.min(3, (wanted.length() + 1) / 3)) + 1;
        for (String candidate : candidates) {
            if (Math.abs(candidate.length() - wanted.length()) >= bestDistance) {
                continue;
            }
            int distance = distance(wanted.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
            if (distance < bestDistance) {
                bestDistance = distance;
                best = candidate;
            }
        }
        return best;
    }

    /** Insertions, deletions and replacements that turn one text into the other. */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int above = row[j];
                int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(replaced, Math.min(above, row[j - 1]) + 1);
                diagonal = above;
            }
        }
        return row[b.length()];
    }
}
