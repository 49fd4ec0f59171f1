// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.EnumMap;
import java.util.Map;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.provider.IItemLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Display;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Viewport;
import org.loomwright.diagram.services.FindingMark;
import org.loomwright.diagram.symbol.Badge;
import org.loomwright.model.files.Fragments;
import org.loomwright.workbench.diagram.SwtPainter;
import org.loomwright.workbench.diagram.Typeface;

/** Labels of the model with the badge of the worst that was found in or below an element. */
final class BadgedLabels extends LabelProvider {
    private static final int PX = 16;
    private final VehicleDocument document;
    private final BadgeImages badges;

    BadgedLabels(VehicleDocument document, Display display) {
        this.document = document;
        badges = new BadgeImages(display);
    }

    @Override
    public String getText(Object element) {
        return document.domain().getAdapterFactory().adapt(element, IItemLabelProvider.class) instanceof IItemLabelProvider labels
                ? labels.getText(element) : super.getText(element);
    }

    @Override
    public Image getImage(Object element) {
        if (!(element instanceof EObject object) || object.eContainer() == null || document.analysis() == null
                || !document.analysis().worked()) {
            return badges.of(null);
        }
        String id = Fragments.of(object);
        FindingMark mark = document.analysis().view().markWithin(id);
        FindingMark cause = mark == null ? document.analysis().view().causeMark(id) : null;
        return badges.of(mark != null ? mark.badge() : cause != null ? cause.badge() : null);
    }

    @Override
    public void dispose() {
        badges.dispose();
        super.dispose();
    }

    /** Badges as images, made when first wanted. */
    static final class BadgeImages {
        private final Display display;
        private final Map<Badge, Image> images = new EnumMap<>(Badge.class);
        private Image none;

        BadgeImages(Display display) {
            this.display = display;
        }

        /** The image of a badge; a blank one for null, so that all labels begin in one column. */
        Image of(Badge badge) {
            if (badge == null) {
                none = none == null ? image(null) : none;
                return none;
            }
            return images.computeIfAbsent(badge, this::image);
        }

        private Image image(Badge badge) {
            Image image = new Image(display, (gc, width, height) -> {
                if (badge != null) {
                    try (SwtPainter painter = new SwtPainter(gc, Theme.light(), Typeface.of(display), Viewport.of(width, height))) {
                        painter.paint(java.util.List.of(new Group(null, null, Group.Kind.BADGE, badge.marks(PX / 2.0, PX / 2.0,
                                PX - 4.0))), 0, 0);
                    }
                }
            }, PX, PX);
            return image;
        }

        void dispose() {
            images.values().forEach(Image::dispose);
            images.clear();
            if (none != null) {
                none.dispose();
                none = null;
            }
        }
    }
}
