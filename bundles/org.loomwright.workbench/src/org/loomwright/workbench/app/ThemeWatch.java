// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.css.swt.theme.ITheme;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.ui.PlatformUI;
import org.osgi.service.event.EventHandler;

/** The light and the dark theme of the window, for what paints itself. */
public final class ThemeWatch {
    private static final String LIGHT = "org.eclipse.e4.ui.css.theme.e4_default";
    private static final String DARK = "org.eclipse.e4.ui.css.theme.e4_dark";

    private ThemeWatch() {
    }

    /** True when the dark theme is active. */
    public static boolean isDark() {
        IThemeEngine engine = PlatformUI.getWorkbench().getService(IThemeEngine.class);
        ITheme active = engine == null ? null : engine.getActiveTheme();
        return active != null && active.getId().startsWith(DARK);
    }

    /** Makes one of the two themes active and remembers it. */
    public static void setDark(boolean dark) {
        IThemeEngine engine = PlatformUI.getWorkbench().getService(IThemeEngine.class);
        if (engine != null) {
            engine.setTheme(dark ? DARK : LIGHT, true);
        }
    }

    /**
     * Calls {@code changed} in the user interface's thread after each change of theme, when widgets have their new colours.
     *
     * @return what ends the watch; close it with the part
     */
    public static AutoCloseable onChange(Runnable changed) {
        IEventBroker broker = PlatformUI.getWorkbench().getService(IEventBroker.class);
        // told before the widgets are restyled
        EventHandler handler = event -> PlatformUI.getWorkbench().getDisplay().asyncExec(changed);
        broker.subscribe(IThemeEngine.Events.THEME_CHANGED, handler);
        return () -> broker.unsubscribe(handler);
    }
}
