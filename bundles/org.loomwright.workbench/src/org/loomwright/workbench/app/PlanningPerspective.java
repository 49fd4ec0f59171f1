// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import java.util.List;
import java.util.stream.Stream;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.IViewRegistry;

/** Vehicles over outline at the left, findings under the editor, properties over derivation at the right. */
public final class PlanningPerspective implements IPerspectiveFactory {
    private static final float LEFT = 0.18f;
    private static final float RIGHT = 0.76f;
    private static final float BELOW = 0.70f;
    private static final float HALF = 0.50f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        String editor = layout.getEditorArea();
        layout.setEditorAreaVisible(true);
        fill(layout.createFolder("left", IPageLayout.LEFT, LEFT, editor), Ids.VEHICLES);
        fill(layout.createFolder("leftBelow", IPageLayout.BOTTOM, HALF, "left"), Ids.OUTLINE);
        fill(layout.createFolder("right", IPageLayout.RIGHT, RIGHT, editor), Ids.PROPERTIES);
        List<String> figures = present(Ids.DERIVATION);
        if (!figures.isEmpty()) {
            fill(layout.createFolder("rightBelow", IPageLayout.BOTTOM, HALF, "right"), figures.toArray(String[]::new));
        }
        IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, BELOW, editor);
        fill(below, Ids.FINDINGS, Ids.PROBLEMS, Ids.STUDY);
        present(Ids.COMPARISON, Ids.CHART).forEach(below::addPlaceholder);
        below.addPlaceholder(Ids.PROGRESS);
        Stream.of(Ids.VEHICLES, Ids.OUTLINE, Ids.PROPERTIES, Ids.DERIVATION, Ids.FINDINGS, Ids.PROBLEMS, Ids.STUDY,
                Ids.COMPARISON, Ids.CHART, Ids.PROGRESS).flatMap(id -> present(id).stream())
                .forEach(layout::addShowViewShortcut);
        layout.addNewWizardShortcut(Ids.PLUGIN + ".wizard.vehicle");
        layout.addNewWizardShortcut(Ids.PLUGIN + ".wizard.demo");
    }

    private static void fill(IFolderLayout folder, String... ids) {
        present(ids).forEach(folder::addView);
    }

    /** Those that are registered; a part that is not installed leaves no hole. */
    private static List<String> present(String... ids) {
        IViewRegistry registry = PlatformUI.getWorkbench().getViewRegistry();
        return Stream.of(ids).filter(id -> registry.find(id) != null).toList();
    }
}
