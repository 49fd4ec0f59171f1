// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.report;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.loomwright.headless.Console;
import org.loomwright.headless.OutputFile;
import org.loomwright.headless.Style;
import picocli.CommandLine.Option;

/** Options that every report has: the practice, its form, where it goes. */
public final class ReportOptions {
    @Option(names = {"-p", "--practice"}, paramLabel = "FILE", description = "Practice to follow instead of the vehicle's own.")
    private Path practiceFile;

    @Option(names = {"-f", "--format"}, paramLabel = "FORM", defaultValue = "text", converter = ReportForm.Word.class,
            description = "text or json. Default: ${DEFAULT-VALUE}.")
    private ReportForm form;

    @Option(names = {"-o", "--output"}, paramLabel = "FILE", description = "File to write instead of standard output.")
    private Path output;

    /** Writes a report. */
    @FunctionalInterface
    public interface Content {
        void writeTo(PrintWriter out, Style style) throws IOException;
    }

    /** Practice to follow, or null for the vehicle's own. */
    public Path practiceFile() {
        return practiceFile;
    }

    /** Whether the report is wanted as JSON. */
    public boolean json() {
        return form == ReportForm.JSON;
    }

    /**
     * Checks before the work begins that a file to be written has a place.
     *
     * @throws org.loomwright.headless.BadInputException when it has none
     */
    public void checkPlace() {
        if (output != null) {
            new OutputFile(output).checkPlace();
        }
    }

    /** Writes a report to where it is wanted. */
    public void write(Console console, Content content) {
        if (output != null) {
            new OutputFile(output).write(out -> {
                PrintWriter printer = new PrintWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
                content.writeTo(printer, new Style(false));
                printer.flush();
            });
            return;
        }
        try {
            content.writeTo(console.out(), new Style(console.outStyled()));
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
