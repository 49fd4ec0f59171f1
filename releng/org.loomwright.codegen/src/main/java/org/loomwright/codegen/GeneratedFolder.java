// SPDX-License-Identifier: EPL-2.0
package org.loomwright.codegen;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder that holds nothing but generated code, with the digest of what it was generated from.
 *
 * <p>The digest, not the time of the files, decides whether to generate again: a fresh clone or a switch of branches
 * sets times at will. The digest stands beside the folder, so that it is not packed with the code.
 */
final class GeneratedFolder {

    private static final String DIGEST_FILE = ".generated-from";

    private final Path folder;
    private final String digest;

    /**
     * @param folder    the folder of generated code, which need not exist
     * @param inputs    the folder whose .ecore and .genmodel files are the input
     * @param generator names the generator and its version
     */
    GeneratedFolder(Path folder, Path inputs, String generator) {
        this.folder = folder;
        this.digest = digest(inputs, generator);
    }

    boolean isUpToDate() {
        Path file = folder.resolveSibling(DIGEST_FILE);
        try {
            return Files.isDirectory(folder) && Files.isRegularFile(file) && Files.readString(file).strip().equals(digest);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Deletes everything in the folder, so that classes which left the metamodel leave the code too. */
    void empty() {
        try {
            Files.deleteIfExists(folder.resolveSibling(DIGEST_FILE));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void markUpToDate() {
        try {
            Files.writeString(folder.resolveSibling(DIGEST_FILE), digest + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String digest(Path inputs, String generator) {
        try (Stream<Path> paths = Files.list(inputs)) {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            sha.update(generator.getBytes(StandardCharsets.UTF_8));
            List<Path> files = paths.filter(p -> p.toString().matches(".*\\.(ecore|genmodel)")).sorted().toList();
            for (Path file : files) {
                sha.update((byte) 0);
                sha.update(file.getFileName().toString().getBytes(StandardCharsets.UTF_8));
                sha.update((byte) 0);
                sha.update(Files.readAllBytes(file));
            }
            return HexFormat.of().formatHex(sha.digest());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
