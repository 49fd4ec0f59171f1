// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.osgi.framework.FrameworkUtil;

/**
 * The folder that keeps work that is not saved. Each time a vehicle is open it has a copy of its own, so that one which nobody
 * decided on is never written over. May be used by several threads.
 */
final class RecoveryFolder {
    private static final String END = ".recovery";
    private final Path folder;

    RecoveryFolder(Path folder) {
        this.folder = folder;
    }

    /** The folder in the workspace's metadata. */
    static RecoveryFolder ofWorkspace() {
        return new RecoveryFolder(Platform.getStateLocation(FrameworkUtil.getBundle(RecoveryFolder.class)).append("recovery")
                .toFile().toPath());
    }

    /**
     * A copy that is kept.
     *
     * @param where where it lies
     * @param copy  the copy
     */
    record Kept(Path where, RecoveryCopy copy) {
    }

    /** A place for a copy of a file, new at every call. */
    Path place(Path file) {
        return folder.resolve(key(file) + "-" + System.currentTimeMillis() + "-" + ProcessHandle.current().pid() + "-"
                + Long.toHexString(System.nanoTime()) + END);
    }

    private static String key(Path file) {
        return FileState.of(file.toString().getBytes(StandardCharsets.UTF_8)).digest().substring(0, 16);
    }

    /** Writes a copy whole: under a temporary name, forced to the disk, then moved. */
    synchronized void write(Path place, RecoveryCopy copy) throws IOException {
        Files.createDirectories(folder);
        Path temporary = Files.createTempFile(folder, "copy", ".tmp");
        try {
            Files.write(temporary, copy.encoded());
            try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            Files.move(temporary, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(temporary);
        }
    }

    /** Forgets a copy. */
    synchronized void delete(Path place) {
        try {
            Files.deleteIfExists(place);
        } catch (IOException kept) {
            ILog.of(RecoveryFolder.class).warn("the recovery copy " + place + " could not be deleted", kept);
        }
    }

    /** Copies of a file, the latest work first. */
    List<Kept> of(Path file) {
        return all().stream().filter(kept -> kept.copy().file().equals(file)).toList();
    }

    /** All copies, the latest work first; what cannot be read is logged and left alone. */
    synchronized List<Kept> all() {
        List<Kept> found = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> places = Files.list(folder)) {
                for (Path place : places.filter(each -> each.toString().endsWith(END)).sorted().toList()) {
                    read(place, found);
                }
            } catch (IOException unreadable) {
                ILog.of(RecoveryFolder.class).warn("the recovery copies in " + folder + " could not be listed", unreadable);
            }
        }
        found.sort(Comparator.comparing((Kept kept) -> kept.copy().last()).reversed());
        return List.copyOf(found);
    }

    private static void read(Path place, List<Kept> found) {
        try {
            found.add(new Kept(place, RecoveryCopy.decoded(Files.readAllBytes(place))));
        } catch (IOException damaged) {
            ILog.of(RecoveryFolder.class).warn("the recovery copy " + place + " could not be read", damaged);
        }
    }
}
