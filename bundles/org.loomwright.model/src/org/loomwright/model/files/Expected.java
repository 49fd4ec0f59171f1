// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.List;

/** Says in few words what would have been right. */
final class Expected {
    private static final int LISTED = 40;

    private Expected() {
    }

    /** The known words, the nearest one first named on its own. */
    static String oneOf(String written, List<String> known, String none) {
        if (known.isEmpty()) {
            return none;
        }
        String nearest = SimilarNames.nearest(written, known);
        String all = String.join(", ", known.subList(0, Math.min(LISTED, known.size())))
                + (known.size() > LISTED ? ", ..." : "");
        return (nearest == null ? "" : "probably " + nearest + "; ") + "known are " + all;
    }
}
