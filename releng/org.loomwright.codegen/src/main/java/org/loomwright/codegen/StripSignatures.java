// SPDX-License-Identifier: EPL-2.0
package org.loomwright.codegen;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Copies jars without their signatures.
 *
 * <p>The virtual machine leaves classes of signed jars out of an archive of loaded classes, which doubles the start time
 * of the command line. Only the signature files and the digests in the manifest go; licences and notices stay, and the
 * classes are unchanged. Entries carry a fixed time, so the same input gives the same bytes.
 *
 * <p>Arguments: source folder, target folder. The target folder's jars are replaced.
 */
public final class StripSignatures {

    private static final Pattern SIGNATURE = Pattern.compile("META-INF/[^/]+\\.(SF|RSA|DSA|EC)", Pattern.CASE_INSENSITIVE);
    /** 2026-01-01T00:00:00Z; the time of the copy itself would only make equal jars differ. */
    private static final long ENTRY_TIME_MS = 1_767_225_600_000L;

    private StripSignatures() {
    }

    /** Copies all jars of the first folder into the second. */
    public static void main(String[] args) throws IOException {
        Path source = Path.of(args[0]);
        Path target = Files.createDirectories(Path.of(args[1]));
        for (Path old : jars(target)) {
            Files.delete(old);
        }
        for (Path jar : jars(source)) {
            copy(jar, target.resolve(jar.getFileName()));
        }
    }

    private static List<Path> jars(Path folder) throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.filter(p -> p.toString().endsWith(".jar")).sorted().toList();
        }
    }

    static boolean isSigned(Path jar) throws IOException {
        try (JarFile file = new JarFile(jar.toFile(), false)) {
            return file.stream().anyMatch(entry -> SIGNATURE.matcher(entry.getName()).matches());
        }
    }

    static void copy(Path from, Path to) throws IOException {
        // copied, not verified: the repository client has checked the digest of the jar as a whole
        try (JarFile jar = new JarFile(from.toFile(), false); OutputStream file = Files.newOutputStream(to);
            JarOutputStream out = new JarOutputStream(file)) {
            Manifest manifest = jar.getManifest();
            if (manifest != null) {
                manifest.getEntries().values().forEach(attributes ->
                    attributes.keySet().removeIf(name -> name.toString().endsWith("-Digest")));
                manifest.getEntries().values().removeIf(attributes -> attributes.isEmpty());
                put(out, JarFile.MANIFEST_NAME);
                manifest.write(out);
                out.closeEntry();
            }
            List<JarEntry> entries = new ArrayList<>(jar.stream().toList());
            entries.sort(Comparator.comparing(JarEntry::getName));
            for (JarEntry entry : entries) {
                String name = entry.getName();
                if (entry.isDirectory() || name.equals(JarFile.MANIFEST_NAME) || SIGNATURE.matcher(name).matches()) {
                    continue;
                }
                put(out, name);
                try (var in = jar.getInputStream(entry)) {
                    in.transferTo(out);
                }
                out.closeEntry();
            }
        }
    }

    private static void put(JarOutputStream out, String name) throws IOException {
        JarEntry entry = new JarEntry(name);
        entry.setTime(ENTRY_TIME_MS);
        out.putNextEntry(entry);
    }
}
