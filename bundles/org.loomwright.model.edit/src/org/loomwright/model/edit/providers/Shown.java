// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.edit.provider.ItemProviderAdapter;
import org.eclipse.emf.edit.provider.ViewerNotification;

/** What the item providers have in common: when a label must be shown anew. */
final class Shown {
    private Shown() {
    }

    /**
     * Has the label of an object shown anew when a reference of it changed; generated providers do so for attributes only, but
     * labels name parts, ends and places too.
     */
    static void relabel(ItemProviderAdapter provider, Notification change) {
        if (!change.isTouch() && change.getFeature() instanceof EReference) {
            provider.fireNotifyChanged(new ViewerNotification(change, change.getNotifier(), false, true));
        }
    }
}
