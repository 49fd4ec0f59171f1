// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.ICoolBarManager;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.action.ToolBarContributionItem;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.swt.SWT;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.ContributionItemFactory;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.menus.CommandContributionItem;
import org.eclipse.ui.menus.CommandContributionItemParameter;
import org.loomwright.workbench.welcome.FirstScreen;

/** The menus and the tool bar that are always there; studies and drawings add theirs. */
final class MenuAdvisor extends ActionBarAdvisor {
    /** Menu that studies add their commands to. */
    static final String STUDIES = "studies";
    /** Menu that the diagrams add their commands to. */
    static final String DRAWING = "drawing";

    private IWorkbenchWindow window;
    private IAction fresh;
    private IAction save;
    private IAction undo;
    private IAction redo;

    MenuAdvisor(IActionBarConfigurer configurer) {
        super(configurer);
    }

    @Override
    protected void makeActions(IWorkbenchWindow forWindow) {
        window = forWindow;
        fresh = made(ActionFactory.NEW);
        save = made(ActionFactory.SAVE);
        undo = made(ActionFactory.UNDO);
        redo = made(ActionFactory.REDO);
    }

    private IAction made(ActionFactory factory) {
        IAction action = factory.create(window);
        register(action);
        return action;
    }

    @Override
    protected void fillMenuBar(IMenuManager bar) {
        bar.add(fileMenu());
        bar.add(editMenu());
        bar.add(grown(Messages.Menu_drawing, DRAWING));
        bar.add(grown(Messages.Menu_studies, STUDIES));
        bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        bar.add(windowMenu());
        bar.add(helpMenu());
    }

    private MenuManager fileMenu() {
        MenuManager menu = new MenuManager(Messages.Menu_file, IWorkbenchActionConstants.M_FILE);
        MenuManager kinds = new MenuManager(Messages.Menu_new, "new");
        kinds.add(ContributionItemFactory.NEW_WIZARD_SHORTLIST.create(window));
        kinds.add(new Separator());
        kinds.add(fresh);
        menu.add(kinds);
        menu.add(new Separator());
        menu.add(made(ActionFactory.CLOSE));
        menu.add(made(ActionFactory.CLOSE_ALL));
        menu.add(new Separator());
        menu.add(save);
        menu.add(made(ActionFactory.SAVE_ALL));
        menu.add(made(ActionFactory.REVERT));
        menu.add(new Separator());
        menu.add(made(ActionFactory.RENAME));
        menu.add(made(ActionFactory.REFRESH));
        menu.add(new Separator());
        menu.add(made(ActionFactory.IMPORT));
        menu.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(new Separator());
        menu.add(made(ActionFactory.QUIT));
        return menu;
    }

    private MenuManager editMenu() {
        MenuManager menu = new MenuManager(Messages.Menu_edit, IWorkbenchActionConstants.M_EDIT);
        menu.add(undo);
        menu.add(redo);
        menu.add(new Separator());
        menu.add(made(ActionFactory.CUT));
        menu.add(made(ActionFactory.COPY));
        menu.add(made(ActionFactory.PASTE));
        menu.add(new Separator());
        menu.add(made(ActionFactory.DELETE));
        menu.add(made(ActionFactory.SELECT_ALL));
        menu.add(new Separator());
        menu.add(made(ActionFactory.FIND));
        menu.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        return menu;
    }

    private static MenuManager grown(String label, String id) {
        MenuManager menu = new MenuManager(label, id);
        menu.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        return menu;
    }

    private MenuManager windowMenu() {
        MenuManager menu = new MenuManager(Messages.Menu_window, IWorkbenchActionConstants.M_WINDOW);
        MenuManager views = new MenuManager(Messages.Menu_views, "views");
        views.add(ContributionItemFactory.VIEWS_SHORTLIST.create(window));
        menu.add(views);
        menu.add(made(ActionFactory.RESET_PERSPECTIVE));
        menu.add(new Separator());
        menu.add(darkTheme());
        menu.add(new Separator());
        menu.add(made(ActionFactory.PREFERENCES));
        return menu;
    }

    private static IAction darkTheme() {
        IAction dark = new Action(Messages.Menu_dark, IAction.AS_CHECK_BOX) {
            @Override
            public void run() {
                ThemeWatch.setDark(isChecked());
            }
        };
        dark.setId(Ids.PLUGIN + ".dark");
        dark.setChecked(ThemeWatch.isDark());
        return dark;
    }

    private MenuManager helpMenu() {
        MenuManager menu = new MenuManager(Messages.Menu_help, IWorkbenchActionConstants.M_HELP);
        IAction first = new Action(Messages.Menu_firstScreen) {
            @Override
            public void run() {
                FirstScreen.open(window.getActivePage());
            }
        };
        first.setId(Ids.PLUGIN + ".first");
        menu.add(first);
        menu.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(new Separator());
        menu.add(made(ActionFactory.ABOUT));
        return menu;
    }

    @Override
    protected void fillCoolBar(ICoolBarManager bar) {
        IToolBarManager tools = new ToolBarManager(SWT.FLAT | SWT.RIGHT);
        tools.add(fresh);
        tools.add(save);
        tools.add(new Separator("history"));
        tools.add(button(IWorkbenchCommandConstants.EDIT_UNDO, ISharedImages.IMG_TOOL_UNDO));
        tools.add(button(IWorkbenchCommandConstants.EDIT_REDO, ISharedImages.IMG_TOOL_REDO));
        bar.add(new ToolBarContributionItem(tools, "main"));
        bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
    }

    /** Follows the active part by its command: retargeted actions are not shown in the bar until they have been active once. */
    private IContributionItem button(String command, String image) {
        CommandContributionItemParameter button = new CommandContributionItemParameter(window, command, command,
                CommandContributionItem.STYLE_PUSH);
        button.icon = PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(image);
        return new CommandContributionItem(button);
    }
}
