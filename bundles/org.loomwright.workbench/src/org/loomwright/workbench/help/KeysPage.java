// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.help;

import java.util.TreeMap;
import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.common.NotDefinedException;
import org.eclipse.jface.bindings.TriggerSequence;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.keys.IBindingService;
import org.eclipse.ui.services.IServiceLocator;
import org.loomwright.workbench.app.Ids;

/** The page of keys, made of what is bound now, so that it holds for keys that a person changed. */
final class KeysPage {
    static final String ID = "keys";
    private static final String EDIT = "org.eclipse.ui.edit.";

    private KeysPage() {
    }

    static HelpPage make(IServiceLocator services) {
        IBindingService bindings = services.getService(IBindingService.class);
        TreeMap<String, String> lines = new TreeMap<>();
        for (Command command : services.getService(ICommandService.class).getDefinedCommands()) {
            TriggerSequence[] keys = bindings.getActiveBindingsFor(command.getId());
            TriggerSequence best = bindings.getBestActiveBindingFor(command.getId());
            if (isOurs(command.getId()) && (keys.length > 0 || best != null)) {
                try {
                    lines.put(command.getName(), best == null ? keys[0].format() : best.format());
                } catch (NotDefinedException gone) {
                    // a command that went away between the two calls has no line
                    continue;
                }
            }
        }
        StringBuilder text = new StringBuilder("<form>").append(HelpPage.titleMarkup(Messages.Keys_title));
        text.append("<p>").append(HelpPage.escaped(Messages.Keys_intro)).append("</p>");
        lines.forEach((name, keys) -> text.append("<li><b>").append(HelpPage.escaped(keys)).append("</b> ")
                .append(HelpPage.escaped(name.replace("&", ""))).append("</li>"));
        return new HelpPage(ID, text.append("</form>").toString());
    }

    private static boolean isOurs(String command) {
        return command.startsWith(Ids.PLUGIN) || command.startsWith(EDIT) || command.startsWith("org.eclipse.ui.file.save");
    }
}
