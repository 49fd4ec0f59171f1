// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.list;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyProblem;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.export.table.Table;
import org.loomwright.headless.BadInputException;
import org.loomwright.headless.Console;
import org.loomwright.headless.ExitCode;
import org.loomwright.headless.OutputFile;
import org.loomwright.headless.Style;
import org.loomwright.headless.input.Arrangements;
import org.loomwright.headless.input.FaultLine;
import org.loomwright.headless.input.VehicleReader;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A command that writes one list of one vehicle in one arrangement. */
abstract class ListCommand implements Callable<Integer> {
    @Parameters(arity = "1", paramLabel = "FILE", description = "Vehicle file.")
    private Path file;

    @Option(names = {"-a", "--arrangement"}, paramLabel = "NAME",
            description = "Arrangement to list. Default: the adopted one, or the only one.")
    private String arrangement;

    @Option(names = {"-f", "--format"}, paramLabel = "FORM", defaultValue = "text", converter = TableFormat.Word.class,
            description = "text, csv, xlsx or json. Default: ${DEFAULT-VALUE}.")
    private TableFormat format;

    @Option(names = {"-o", "--output"}, paramLabel = "FILE",
            description = "File to write instead of standard output; needed for xlsx.")
    private Path output;

    private final Console console;

    ListCommand(Console console) {
        this.console = console;
    }

    /** What a list is made of. */
    record Listed(Vehicle vehicle, Arrangement arrangement, Plan plan) {
    }

    /** The list. */
    abstract Table table(Listed listed);

    /** Name of the list in JSON. */
    abstract String jsonName();

    /** Lines below the list for people. */
    abstract List<String> notes(Listed listed);

    @Override
    public Integer call() {
        if (format == TableFormat.XLSX && output == null) {
            throw new BadInputException("a workbook cannot go to standard output; name a file with --output");
        }
        OutputFile target = output == null ? null : new OutputFile(output);
        if (target != null) {
            target.checkPlace();
        }
        VehicleReader.Read read = new VehicleReader().vehicle(file);
        read.faults().stream().map(FaultLine::of).forEach(console.err()::println);
        if (read.vehicle() == null) {
            return ExitCode.BAD_INPUT.code();
        }
        Arrangement chosen = chosen(read.vehicle());
        AssemblyResult assembled = Assembly.assemble(read.vehicle(), chosen, null);
        for (AssemblyProblem problem : assembled.problems()) {
            console.err().println(file + ": " + problem.element() + ": " + problem.message());
        }
        Listed listed = new Listed(read.vehicle(), chosen, assembled.plan());
        write(listed, table(listed), target);
        return assembled.problems().isEmpty() ? ExitCode.CLEAN.code() : ExitCode.FINDINGS.code();
    }

    private Arrangement chosen(Vehicle vehicle) {
        List<Arrangement> found = Arrangements.of(vehicle, arrangement == null ? List.of() : List.of(arrangement));
        if (found.size() > 1) {
            throw new BadInputException("vehicle " + vehicle.getName() + " has several arrangements and none is adopted; "
                    + "choose one of " + String.join(", ", found.stream().map(Arrangement::getName).toList()) + " with --arrangement");
        }
        return found.get(0);
    }

    private void write(Listed listed, Table table, OutputFile target) {
        TableOutput to = new TableOutput(format, jsonName(), listed.plan());
        if (target != null) {
            target.write(out -> write(to, listed, table, out));
            return;
        }
        Writer out = console.out();
        try {
            to.write(table, notes(listed), new Style(console.outStyled()), out);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private void write(TableOutput to, Listed listed, Table table, OutputStream out) throws IOException {
        if (format == TableFormat.XLSX) {
            TableOutput.workbook(new ArrayList<>(List.of(table)), out);
            return;
        }
        Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        to.write(table, notes(listed), new Style(false), writer);
        writer.flush();
    }
}
