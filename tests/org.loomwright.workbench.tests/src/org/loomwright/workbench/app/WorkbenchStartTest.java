// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

class WorkbenchStartTest {
    @Test
    void opensOneWindowWithThePlanningPerspective() {
        assertTrue(PlatformUI.isWorkbenchRunning());
        IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        assertEquals(Ids.PERSPECTIVE, page.getPerspective().getId());
        assertNotNull(page.findView(Ids.VEHICLES));
    }

    @Test
    void readsItsOwnOptionsAndLeavesThePlatforms() {
        assertEquals(new StartOptions(true, false), StartOptions.of("-data", "x", "--demo"));
        assertEquals(new StartOptions(false, true), StartOptions.of("--time"));
    }
}
