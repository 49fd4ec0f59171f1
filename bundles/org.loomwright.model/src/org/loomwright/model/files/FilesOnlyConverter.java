// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.impl.ExtensibleURIConverterImpl;

/** Reads and writes plain files inside the allowed folders, and nothing else: no network, no archives, no devices. */
final class FilesOnlyConverter extends ExtensibleURIConverterImpl {
    private static final long LARGEST_BYTES = 1L << 30;

    private final AllowedFolders allowed;

    FilesOnlyConverter(AllowedFolders allowed) {
        this.allowed = allowed;
    }

    @Override
    public InputStream createInputStream(URI uri, Map<?, ?> options) throws IOException {
        Path path = checked(uri);
        if (!Files.exists(path)) {
            throw new RefusedFileException("does not exist", "an existing file");
        }
        if (Files.isDirectory(path)) {
            throw new RefusedFileException("is a folder", "a file");
        }
        if (!Files.isRegularFile(path)) {
            throw new RefusedFileException("is no plain file", "a plain file");
        }
        if (Files.size(path) > LARGEST_BYTES) {
            throw new RefusedFileException("is larger than 1 GiB", "a file of a few megabytes");
        }
        return Files.newInputStream(path);
    }

    @Override
    public OutputStream createOutputStream(URI uri, Map<?, ?> options) throws IOException {
        return Files.newOutputStream(checked(uri));
    }

    @Override
    public boolean exists(URI uri, Map<?, ?> options) {
        Path path = FilePaths.path(normalize(uri));
        return path != null && allowed.allows(path) && Files.isRegularFile(path);
    }

    private Path checked(URI uri) throws IOException {
        Path path = FilePaths.path(normalize(uri));
        if (path == null) {
            throw new RefusedFileException("is not read: only plain files are, not " + uri.scheme() + ":",
                    "the relative path of a file");
        }
        if (!allowed.allows(path)) {
            throw new RefusedFileException("is outside the folders this file may refer to",
                    "a file below " + allowed.describe());
        }
        return path;
    }
}
