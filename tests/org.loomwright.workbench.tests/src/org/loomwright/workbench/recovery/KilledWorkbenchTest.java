// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.workbench.live.FleetCopy;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

/** A workbench that is killed while there is work to save offers that work when it is started again. */
class KilledWorkbenchTest {
    private static final long PATIENCE_S = 180;
    /** Bundles that have to be started; all others are when they are needed. */
    private static final Set<String> STARTED = Set.of("org.apache.felix.scr", "org.eclipse.equinox.common",
            "org.eclipse.equinox.event", "org.eclipse.core.runtime");
    @TempDir
    private Path folder;
    private Process process;

    @AfterEach
    void end() {
        if (process != null) {
            process.destroyForcibly();
        }
    }

    /** The bundles of this run, as a configuration of its own. */
    private Path configuration() throws IOException {
        List<String> bundles = new ArrayList<>();
        for (Bundle bundle : FrameworkUtil.getBundle(KilledWorkbenchTest.class).getBundleContext().getBundles()) {
            if (bundle.getBundleId() != 0) {
                String start = STARTED.contains(bundle.getSymbolicName())
                        ? bundle.getSymbolicName().endsWith("core.runtime") ? "@start" : "@2:start" : "";
                bundles.add("reference:" + file(bundle).toURI() + start);
            }
        }
        Path configuration = Files.createDirectories(folder.resolve("configuration"));
        Files.writeString(configuration.resolve("config.ini"), "osgi.bundles=" + String.join(",", bundles)
                + "\nosgi.bundles.defaultStartLevel=4\neclipse.product=org.loomwright.workbench.product\n");
        return configuration;
    }

    private static File file(Bundle bundle) {
        return FileLocator.getBundleFileLocation(bundle)
                .orElseThrow(() -> new IllegalStateException("no file of " + bundle.getSymbolicName()));
    }

    private void started(Path configuration, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true", "-cp",
                file(Platform.getBundle("org.eclipse.osgi")).getPath(), "org.eclipse.core.runtime.adaptor.EclipseStarter",
                "-configuration", configuration.toString(), "-nosplash", "-application", "org.loomwright.workbench.mortal",
                "-data", folder.resolve("workspace").toString()));
        if (System.getProperty("osgi.dev") != null) {
            command.addAll(List.of("-dev", System.getProperty("osgi.dev")));
        }
        command.addAll(List.of(arguments));
        Process begun = new ProcessBuilder(command).redirectError(folder.resolve("errors").toFile()).start();
        process = begun;
        // one that says nothing is ended, so that whoever listens to it goes on
        CompletableFuture.delayedExecutor(PATIENCE_S, TimeUnit.SECONDS).execute(begun::destroyForcibly);
    }

    /** The rest of the line that the process begins with a word; what it says before is passed over. */
    private String said(BufferedReader out, String word) throws IOException {
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            if (line.startsWith(word)) {
                return line.substring(word.length()).strip();
            }
        }
        throw new AssertionError("the workbench ended without saying " + word + ":\n"
                + Files.readString(folder.resolve("errors")));
    }

    @Test
    void offersTheWorkThatWasNotSavedAtItsNextStart() throws Exception {
        Path file = FleetCopy.vehicle(Files.createDirectories(folder.resolve("fleet")), "otter");
        byte[] saved = Files.readAllBytes(file);
        Path configuration = configuration();
        started(configuration, "--work", file.toString());
        said(process.inputReader(StandardCharsets.UTF_8), "KEPT");
        // no hook, no handler and no shutdown runs after this signal
        process.destroyForcibly();
        assertTrue(process.waitFor(PATIENCE_S, TimeUnit.SECONDS));
        assertArrayEquals(saved, Files.readAllBytes(file));

        started(configuration, "--look");
        BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
        String offered = said(out, "OFFERED");
        assertTrue(offered.startsWith("Work on otter.vehicle that was not saved has been kept: 3 changes, the last at "), offered);
        assertTrue(offered.contains("Section 120"), offered);
        assertEquals("true 120", said(out, "RESTORED"));
        assertTrue(process.waitFor(PATIENCE_S, TimeUnit.SECONDS));
    }
}
