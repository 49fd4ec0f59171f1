// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import java.time.LocalDate;

/**
 * What a title block tells, after the data fields of ISO 7200 (recalled): title, kind of document, identification, date of
 * issue, creator, checker. Scale, size of paper and number of the sheet are added when the sheets are made. Texts may be empty.
 *
 * @param title       title, for example the vehicle's name
 * @param document    kind of document, for example {@code Plan, seen from above}
 * @param vehicle     name of the vehicle
 * @param arrangement name of the arrangement, with its status where it has one
 * @param caseName    case whose figures are shown
 * @param date        date of issue
 * @param file        file the drawing was made from, with what tells its version
 * @param program     program and version that made it
 * @param drawnBy     who drew it; left open for a hand where it is empty
 * @param checkedBy   who checked it; likewise
 * @param caution     what has to be heeded, in one or two sentences
 */
public record TitleData(String title, String document, String vehicle, String arrangement, String caseName, LocalDate date,
        String file, String program, String drawnBy, String checkedBy, String caution) {
}
