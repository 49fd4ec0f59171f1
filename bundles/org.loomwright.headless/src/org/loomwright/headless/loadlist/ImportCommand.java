// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.loadlist;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import org.loomwright.export.table.JsonTables;
import org.loomwright.export.table.Table;
import org.loomwright.export.table.TextTable;
import org.loomwright.headless.BadInputException;
import org.loomwright.headless.Console;
import org.loomwright.headless.ExitCode;
import org.loomwright.headless.Style;
import org.loomwright.headless.WrappedText;
import org.loomwright.headless.check.Caution;
import org.loomwright.headless.input.FaultLine;
import org.loomwright.headless.input.VehicleReader;
import org.loomwright.headless.report.JsonDocument;
import org.loomwright.headless.report.ReportForm;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.files.VehicleResource;
import org.loomwright.model.vehicle.Vehicle;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loomwright import}: makes loads of a list that was kept elsewhere. */
@Command(name = "import", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Makes loads of the rows of a list (.csv, .xlsx), with parts of the vehicle's libraries where they are called "
                + "the same, and places where they are given.",
        footer = {"", "Columns are known by their heads, in English or German: name, part, place, power, current, voltage, count, "
                + "x, y, z, priority, note. Units may stand in the head or in the cell. Without --apply nothing is written."})
public final class ImportCommand implements Callable<Integer> {
    @Parameters(arity = "1", paramLabel = "FILE", description = "Vehicle file.")
    private Path file;

    @Option(names = {"-l", "--list"}, paramLabel = "LIST", required = true, description = "The list of loads.")
    private Path list;

    @Option(names = {"-c", "--column"}, paramLabel = "WHAT=HEAD",
            description = "The head of the column that holds something, where it is not found by itself; for example power=Watts.")
    private Map<String, String> columns = new LinkedHashMap<>();

    @Option(names = "--apply", description = "Write the loads into the vehicle file.")
    private boolean apply;

    @Option(names = {"-f", "--format"}, paramLabel = "FORM", defaultValue = "text", converter = ReportForm.Word.class,
            description = "text or json. Default: ${DEFAULT-VALUE}.")
    private ReportForm form;

    private final Console console;

    /** The command on a console. */
    public ImportCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        VehicleReader.Read read = new VehicleReader().vehicle(file);
        read.faults().stream().map(FaultLine::of).forEach(console.err()::println);
        if (read.vehicle() == null) {
            return ExitCode.BAD_INPUT.code();
        }
        LoadList loads;
        try {
            ListSheet sheet = ListFile.read(list);
            loads = LoadList.of(sheet, match(sheet));
        } catch (UnreadableListException unreadable) {
            throw new BadInputException(list + ": " + unreadable.getMessage());
        }
        LoadListPlan plan = LoadListPlan.of(read.vehicle(), loads);
        if (apply && plan.loads() > 0) {
            save(read.vehicle(), plan);
        }
        write(read.vehicle(), loads, plan);
        boolean all = loads.faults().isEmpty() && plan.rows().stream().allMatch(row -> row.told().isEmpty());
        return (all ? ExitCode.CLEAN : ExitCode.FINDINGS).code();
    }

    private ColumnMatch match(ListSheet sheet) {
        ColumnMatch match = ColumnMatch.guess(sheet);
        for (Map.Entry<String, String> each : columns.entrySet()) {
            int index = sheet.header().cells().indexOf(each.getValue());
            if (index < 0) {
                throw new BadInputException(list + ": no column has the head " + each.getValue() + "; there are "
                        + String.join(", ", sheet.header().cells()));
            }
            try {
                match = match.with(ColumnWords.column(each.getKey()), index);
            } catch (IllegalArgumentException unknown) {
                throw new BadInputException(unknown.getMessage());
            }
        }
        return match;
    }

    private void save(Vehicle vehicle, LoadListPlan plan) {
        try {
            plan.carryOut(vehicle);
            VehicleFiles.save((VehicleResource) vehicle.eResource());
        } catch (IOException problem) {
            throw new BadInputException("cannot write " + file + ": " + problem.getMessage());
        }
    }

    private void write(Vehicle vehicle, LoadList loads, LoadListPlan plan) {
        Table table = LoadListTable.of(loads, plan);
        PrintWriter out = console.out();
        if (form == ReportForm.JSON) {
            json(vehicle, table, plan, out);
            return;
        }
        out.println(new Style(console.outStyled()).strong(table.title()) + "  " + vehicle.getName());
        out.println();
        new TextTable(table, "  ").all().forEach(out::println);
        out.println();
        WrappedText.write(out, "", "", count(plan.loads()) + (apply ? plan.loads() == 0 ? ", nothing written." : " written into "
                + file + "." : " would be made; --apply writes them."));
        out.println();
        WrappedText.write(out, "", "", Caution.TEXT);
    }

    private void json(Vehicle vehicle, Table table, LoadListPlan plan, PrintWriter out) {
        try {
            JsonGenerator json = JsonDocument.open(out, "import", Caution.TEXT);
            json.writeStringField("vehicle", vehicle.getName());
            json.writeNumberField("loads", plan.loads());
            json.writeBooleanField("written", apply && plan.loads() > 0);
            JsonTables.write(table, "rows", json);
            JsonDocument.close(json, out);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static String count(int loads) {
        return loads == 1 ? "1 load" : loads + " loads";
    }
}
