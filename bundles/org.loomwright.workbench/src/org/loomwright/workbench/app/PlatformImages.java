// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import java.net.URL;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.osgi.framework.Bundle;

/**
 * Images that views of the platform look up by name and that only an IDE declares; without them red squares are shown.
 */
final class PlatformImages {
    private static final Map<String, String> PATHS = new TreeMap<>(Map.ofEntries(
            Map.entry("IMG_OBJ_PROJECT", "obj16/prj_obj"),
            Map.entry("IMG_OBJ_PROJECT_CLOSED", "obj16/cprj_obj"),
            Map.entry("IMG_OBJS_ERROR_PATH", "obj16/error_tsk"),
            Map.entry("IMG_OBJS_WARNING_PATH", "obj16/warn_tsk"),
            Map.entry("IMG_OBJS_INFO_PATH", "obj16/info_tsk"),
            Map.entry("IMG_OBJS_FIXABLE_ERROR", "obj16/quickfix_error_obj"),
            Map.entry("IMG_OBJS_FIXABLE_WARNING", "obj16/quickfix_warning_obj"),
            Map.entry("IMG_OBJS_FIXABLE_INFO", "obj16/quickfix_info_obj"),
            Map.entry("IMG_DLGBAN_QUICKFIX_DLG", "wizban/quick_fix"),
            Map.entry("IMG_WIZBAN_NEWPRJ_WIZ", "wizban/newprj_wiz"),
            Map.entry("IMG_WIZBAN_NEWFILE_WIZ", "wizban/newfile_wiz"),
            Map.entry("IMG_WIZBAN_NEWFOLDER_WIZ", "wizban/newfolder_wiz")));

    private PlatformImages() {
    }

    static void declare(IWorkbenchConfigurer configurer) {
        Bundle ide = Platform.getBundle("org.eclipse.ui.ide");
        PATHS.forEach((name, path) -> {
            URL url = image(ide, path);
            if (url != null) {
                configurer.declareImage(name, ImageDescriptor.createFromURL(url), true);
            }
        });
    }

    private static URL image(Bundle ide, String path) {
        URL svg = ide.getEntry("icons/full/" + path + ".svg");
        return svg != null ? svg : ide.getEntry("icons/full/" + path + ".png");
    }
}
