// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.list;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.OpenSections;
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
        return CableSchedule.of(listed.plan(), OpenSections.of(listed.vehicle(), listed.arrangement()), existing);
    }

    @Override
    String jsonName() {
        return "cables";
    }

    @Override
    List<String> notes(Listed listed) {
        List<String> notes = new ArrayList<>(List.of("Lengths are what is cut: path, tails and slack."));
        int open = OpenSections.of(listed.vehicle(), listed.arrangement()).size();
        if (open > 0) {
            notes.add(open + (open == 1 ? " cable has" : " cables have") + " no section yet; 'loomwright size' chooses it.");
        }
        return notes;
    }
}
