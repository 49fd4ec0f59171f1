// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.welcome;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.wizard.IWizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWizard;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.EditorPart;
import org.loomwright.headless.check.Caution;
import org.loomwright.workbench.app.Ids;
import org.loomwright.workbench.wizard.DemoFleet;
import org.loomwright.workbench.wizard.FolderWizard;
import org.loomwright.workbench.wizard.NewVehicleWizard;

/** What is seen first in an empty workspace: what the tool is for, the cautions, and three ways to begin. */
public final class FirstScreen extends EditorPart {
    private static final int TEXT_WIDTH = 560;
    private static final int MARGIN = 32;

    private Button first;

    /** Shows the screen in a page. */
    public static void open(IWorkbenchPage page) {
        try {
            page.openEditor(new WelcomeInput(), Ids.WELCOME);
        } catch (PartInitException problem) {
            ILog.of(FirstScreen.class).log(problem.getStatus());
        }
    }

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(Messages.Welcome_title);
    }

    @Override
    public void createPartControl(Composite parent) {
        ScrolledComposite scroll = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.H_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        Composite body = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.swtDefaults().margins(MARGIN, MARGIN).spacing(8, 12).applyTo(body);
        Label head = text(body, Messages.Welcome_head);
        head.setFont(JFaceResources.getHeaderFont());
        text(body, Messages.Welcome_purpose);
        text(body, Messages.Welcome_cautions).setFont(JFaceResources.getBannerFont());
        text(body, Caution.TEXT);
        text(body, Messages.Welcome_begin).setFont(JFaceResources.getBannerFont());
        first = way(body, Messages.Welcome_demo, Messages.Welcome_demoText, () -> DemoFleet.importOnce(page()));
        way(body, Messages.Welcome_folder, Messages.Welcome_folderText, () -> run(new FolderWizard()));
        way(body, Messages.Welcome_vehicle, Messages.Welcome_vehicleText, () -> run(new NewVehicleWizard()));
        scroll.setContent(body);
        scroll.setMinSize(body.computeSize(SWT.DEFAULT, SWT.DEFAULT));
    }

    private IWorkbenchPage page() {
        return getSite().getPage();
    }

    private static Label text(Composite body, String text) {
        Label label = new Label(body, SWT.WRAP);
        label.setText(text);
        GridDataFactory.swtDefaults().hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private static Button way(Composite body, String label, String tip, Runnable action) {
        Button button = new Button(body, SWT.PUSH);
        button.setText(label);
        button.addListener(SWT.Selection, event -> action.run());
        GridDataFactory.swtDefaults().hint(TEXT_WIDTH / 2, SWT.DEFAULT).applyTo(button);
        text(body, tip);
        return button;
    }

    private void run(IWizard wizard) {
        ((IWorkbenchWizard) wizard).init(getSite().getWorkbenchWindow().getWorkbench(), StructuredSelection.EMPTY);
        new WizardDialog(getSite().getShell(), wizard).open();
    }

    @Override
    public void setFocus() {
        first.setFocus();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        // nothing to save
    }

    @Override
    public void doSaveAs() {
        // nothing to save
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }
}
