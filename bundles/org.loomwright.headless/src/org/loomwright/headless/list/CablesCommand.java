// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.list;

import java.util.List;
import org.loomwright.export.schedule.CableSchedule;
import org.loomwright.export.table.Table;
import org.loomwright.headless.Console;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code loomwright cables}: the cable schedule. */
@Command(name = "cables", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Lists the cables of an arrangement: from, to, section, colour, length, path and label.")
public final class CablesCommand extends ListCommand {
    @Option(names = "--existing", description = "List the base vehicle's own wiring too.")
    private boolean existing;

    /** The command on a console. */
    public CablesCommand(Console console) {
        super(console);
    }

    @Override
    Table table(Listed listed) {
        return CableSchedule.of(listed.plan(), existing);
    }

    @Override
    String jsonName() {
        return "cables";
    }

    @Override
    List<String> notes(Listed listed) {
        return List.of("Lengths are what is cut: path, tails and slack.");
    }
}
