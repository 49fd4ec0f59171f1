// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.protection;

import java.io.PrintWriter;
import org.loomwright.engine.result.Severity;
import org.loomwright.export.table.Table;
import org.loomwright.export.table.TextTable;
import org.loomwright.headless.Style;
import org.loomwright.headless.WrappedText;
import org.loomwright.headless.check.CheckText;

/** Writes the protection study of a vehicle for people: findings, then a line for each conductor, return and device. */
final class ProtectionText {
    private final PrintWriter out;
    private final Style style;
    private final Severity threshold;

    /** A report on {@code out} that leaves out findings below the threshold. */
    ProtectionText(PrintWriter out, Style style, Severity threshold) {
        this.out = out;
        this.style = style;
        this.threshold = threshold;
    }

    /** Writes one vehicle. */
    void write(StudiedProtection studied) {
        new CheckText(out, style, threshold).write(studied.vehicle());
        ProtectionTables tables = new ProtectionTables(studied.table(), studied.context().names());
        table(tables.supplies(), "next device before each; smallest fault at its far end, largest at its near end");
        table(tables.returns(), "device with the largest rating whose faults each carries");
        table(tables.devices(),
                "largest fault at its own terminals, whether it breaks it without help from the device before it");
        out.println();
        WrappedText.write(out, "  ", "rating    ", "In up to r Iz");
        WrappedText.write(out, "  ", "overload  ", "I2, which clears for certain, up to the practice's share of Iz");
        WrappedText.write(out, "  ", "short     ", "below the short-time limit along the slowest curve, for all fault currents");
        WrappedText.write(out, "  ", "cleared   ", "the smallest fault is cleared within the practice's time");
        out.println();
    }

    private void table(Table table, String legend) {
        if (table.rows().isEmpty()) {
            return;
        }
        out.println("  " + style.strong(table.title()) + style.faint("  " + legend));
        new TextTable(table, "    ").all().forEach(out::println);
        out.println();
    }
}
