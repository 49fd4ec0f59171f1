// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecoveryCopyTest {
    private static final byte[] CONTENT = "<vehicle>\n\n  text with = and \u00fc\n</vehicle>\n".getBytes(StandardCharsets.UTF_8);
    @TempDir
    private Path folder;

    private static RecoveryCopy copy(String file, String last) {
        return new RecoveryCopy(Path.of(file), 12, "Move\nM41", Instant.parse(last), FileState.of(new byte[] {1}), CONTENT);
    }

    @Test
    void aCopyIsReadAsItWasWritten() throws IOException {
        RecoveryCopy copy = copy("/fleet/a=b.vehicle", "2031-05-06T14:03:00Z");
        RecoveryCopy read = RecoveryCopy.decoded(copy.encoded());
        assertEquals(copy.file(), read.file());
        assertEquals(12, read.changes());
        assertEquals("Move M41", read.label());
        assertEquals(copy.last(), read.last());
        assertEquals(copy.base(), read.base());
        assertArrayEquals(CONTENT, read.content());
    }

    @Test
    void anythingElseIsRefusedAndNeverTakenForACopy() {
        byte[] whole = copy("/fleet/a.vehicle", "2031-05-06T14:03:00Z").encoded();
        int head = whole.length - CONTENT.length;
        for (int length = 0; length < head; length++) {
            byte[] torn = Arrays.copyOf(whole, length);
            assertThrows(IOException.class, () -> RecoveryCopy.decoded(torn));
        }
        assertThrows(IOException.class, () -> RecoveryCopy.decoded(CONTENT));
    }

    @Test
    void theLatestWorkIsFirstAndEachOpeningHasItsOwnCopy() throws IOException {
        RecoveryFolder kept = new RecoveryFolder(folder.resolve("recovery"));
        assertEquals(List.of(), kept.all());
        Path file = Path.of("/fleet/a.vehicle");
        Path first = kept.place(file);
        Path second = kept.place(file);
        assertFalse(first.equals(second));
        kept.write(first, copy("/fleet/a.vehicle", "2031-05-06T14:03:00Z"));
        kept.write(second, copy("/fleet/a.vehicle", "2031-05-06T15:03:00Z"));
        kept.write(kept.place(Path.of("/fleet/b.vehicle")), copy("/fleet/b.vehicle", "2031-05-06T16:03:00Z"));
        Files.writeString(folder.resolve("recovery/torn.recovery"), "loomwright-recovery 1\nfile=/fl");
        assertEquals(3, kept.all().size());
        assertEquals(List.of(second, first), kept.of(file).stream().map(RecoveryFolder.Kept::where).toList());
        kept.delete(second);
        assertEquals(List.of(first), kept.of(file).stream().map(RecoveryFolder.Kept::where).toList());
        assertTrue(Files.exists(folder.resolve("recovery/torn.recovery")), "what cannot be read is left alone");
    }
}
