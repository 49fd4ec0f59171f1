// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.eclipse.emf.common.util.URI;

/** Paths of files and their URIs. */
final class FilePaths {
    private FilePaths() {
    }

    /** The URI of a path: absolute, with {@code .} and {@code ..} removed. */
    static URI uri(Path path) {
        return URI.createFileURI(path.toAbsolutePath().normalize().toString());
    }

    /** The absolute path of a file URI; null for any other URI. */
    static Path path(URI uri) {
        if (!uri.isFile()) {
            return null;
        }
        try {
            return Path.of(uri.toFileString()).toAbsolutePath().normalize();
        } catch (InvalidPathException e) {
            return null;
        }
    }

    /** A URI as people know it: a path where it is a file. */
    static String shown(URI uri) {
        return uri.isFile() ? uri.toFileString() : uri.isPlatformResource() ? uri.toPlatformString(true) : uri.toString();
    }

    /** The last segment of a URI, for messages. */
    static String name(URI uri) {
        String last = uri.lastSegment();
        return last == null ? uri.toString() : URI.decode(last);
    }
}
