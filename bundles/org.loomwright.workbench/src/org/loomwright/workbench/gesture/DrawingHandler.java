// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.handlers.HandlerUtil;
import org.loomwright.workbench.editor.VehicleEditor;

/** Does a command on the drawing of the active editor; which one is written behind the class's name in the registry. */
public final class DrawingHandler extends AbstractHandler implements IExecutableExtension {
    private DrawingCommand command;

    @Override
    public void setInitializationData(IConfigurationElement element, String property, Object data) {
        command = DrawingCommand.of((String) data);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        if (HandlerUtil.getActiveEditor(event) instanceof VehicleEditor editor && editor.pane() != null) {
            command.on(editor.pane());
        }
        return null;
    }
}
