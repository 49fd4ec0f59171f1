// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/**
 * A reference as read, to be resolved once the whole file is there.
 *
 * @param referrer  the referring element
 * @param reference the reference
 * @param text      one or more names as written
 * @param tag       place of the referring element's start tag in the text
 */
record PendingReference(EObject referrer, EReference reference, String text, int tag) {
}
