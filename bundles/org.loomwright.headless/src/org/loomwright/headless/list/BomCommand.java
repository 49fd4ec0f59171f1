// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.list;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.export.bom.BillOfMaterials;
import org.loomwright.export.bom.BomBuilder;
import org.loomwright.export.bom.BomTable;
import org.loomwright.export.table.Table;
import org.loomwright.headless.Console;
import picocli.CommandLine.Command;

/** {@code loomwright bom}: what has to be bought. */
@Command(name = "bom", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Lists what has to be bought for an arrangement: existing wiring left out, stock at hand deducted.")
public final class BomCommand extends ListCommand {

    /** The command on a console. */
    public BomCommand(Console console) {
        super(console);
    }

    @Override
    Table table(Listed listed) {
        return BomTable.of(bill(listed));
    }

    private static BillOfMaterials bill(Listed listed) {
        return BomBuilder.build(listed.vehicle(), listed.arrangement(), listed.plan());
    }

    @Override
    String jsonName() {
        return "bom";
    }

    @Override
    List<String> notes(Listed listed) {
        BillOfMaterials bill = bill(listed);
        long unknown = bill.linesWithoutPrice();
        List<String> notes = new ArrayList<>();
        notes.add("Lengths include tails and slack. Prices are those of the parts libraries, which say where they come from."
                + (unknown == 0 ? "" : " " + unknown + (unknown == 1 ? " line has" : " lines have") + " no price."));
        notes.addAll(bill.uncounted());
        return notes;
    }
}
