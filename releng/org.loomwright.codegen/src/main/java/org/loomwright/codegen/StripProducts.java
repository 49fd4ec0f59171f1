// SPDX-License-Identifier: EPL-2.0
package org.loomwright.codegen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Takes the signatures off the jars of products, in place: the framework's loader verifies each class of a signed jar, and the
 * virtual machine leaves such classes, and all that extend them, out of an archive of loaded classes.
 *
 * <p>Argument: a folder; all folders named {@code plugins} below it are gone through. Jars without a signature stay as they are.
 */
public final class StripProducts {

    private StripProducts() {
    }

    /** Goes through the folder. */
    public static void main(String[] args) throws IOException {
        List<Path> jars;
        try (Stream<Path> paths = Files.walk(Path.of(args[0]))) {
            jars = paths.filter(StripProducts::isPlugin).sorted().toList();
        }
        // the products carry the same jars: each is stripped once
        Map<String, Path> done = new TreeMap<>();
        for (Path jar : jars) {
            Path same = done.get(jar.getFileName().toString());
            if (same != null) {
                Files.copy(same, jar, StandardCopyOption.REPLACE_EXISTING);
            } else if (StripSignatures.isSigned(jar)) {
                Path stripped = Files.createTempFile(jar.getParent(), "stripped", ".tmp");
                StripSignatures.copy(jar, stripped);
                // written over, so that the jar keeps its permissions
                Files.write(jar, Files.readAllBytes(stripped));
                Files.delete(stripped);
                done.put(jar.getFileName().toString(), jar);
            }
        }
    }

    private static boolean isPlugin(Path path) {
        return path.toString().endsWith(".jar") && path.getParent().endsWith("plugins");
    }
}
