// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.nio.file.Path;
import org.eclipse.emf.common.util.URI;

/** Shows paths the way a person gave the first one: relative or absolute. */
final class ShownPaths {
    private final Path given;

    ShownPaths(Path given) {
        this.given = given;
    }

    String of(URI uri) {
        Path path = FilePaths.path(uri);
        if (path == null) {
            return uri.toString();
        }
        if (path.equals(given.toAbsolutePath().normalize())) {
            return given.toString();
        }
        Path here = Path.of("").toAbsolutePath();
        return given.isAbsolute() || !java.util.Objects.equals(path.getRoot(), here.getRoot()) ? path.toString()
                : here.relativize(path).toString();
    }
}
