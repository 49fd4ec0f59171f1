// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Display;
import org.loomwright.diagram.symbol.Badge;
import org.loomwright.engine.result.Finding;
import org.loomwright.workbench.diagram.MarkImage;

/** Badges as images, made when first wanted. */
public final class BadgeImages {
    private static final int PX = 16;
    private final Display display;
    private final Map<Badge, Image> images = new EnumMap<>(Badge.class);
    private Image none;

    /** Of a display. */
    public BadgeImages(Display display) {
        this.display = display;
    }

    /** The image of a badge; a blank one for null, so that all labels begin in one column. */
    public Image of(Badge badge) {
        if (badge == null) {
            none = none == null ? image(null) : none;
            return none;
        }
        return images.computeIfAbsent(badge, this::image);
    }

    private Image image(Badge badge) {
        return MarkImage.of(display, badge == null ? List.of() : badge.marks(PX / 2.0, PX / 2.0, PX - 4.0), PX);
    }

    /** Badge of a finding. */
    public static Badge badge(Finding finding) {
        return finding.accepted() != null ? Badge.ACCEPTED : switch (finding.severity()) {
            case ERROR -> Badge.ERROR;
            case WARNING -> Badge.WARNING;
            case NOTE -> Badge.NOTE;
        };
    }

    /** Lets go of the images. */
    public void dispose() {
        images.values().forEach(Image::dispose);
        images.clear();
        if (none != null) {
            none.dispose();
            none = null;
        }
    }
}
