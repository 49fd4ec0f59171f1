// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.Map;

/**
 * What a file looks like apart from its model: kept when it is saved.
 *
 * @param byteOrderMark  starts with a byte order mark
 * @param lineEnd        the line end used
 * @param prolog         all text before the root element
 * @param rootTag        the root element's qualified name as written
 * @param rootAttributes attributes of the root that belong to XML, not to the model, in order
 * @param epilog         all text after the root element
 * @param comments       has comments or processing instructions inside the root element, which saving loses
 */
record FileForm(boolean byteOrderMark, String lineEnd, String prolog, String rootTag, Map<String, String> rootAttributes,
        String epilog, boolean comments) {
}
