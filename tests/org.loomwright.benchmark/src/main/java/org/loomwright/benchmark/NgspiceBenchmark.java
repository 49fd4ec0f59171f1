// SPDX-License-Identifier: EPL-2.0
package org.loomwright.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.flow.FlowSolver;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.flow.OperatingPoint;
import org.loomwright.engine.flow.SpiceNetlist;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One operating point of the 60-load network by the engine and by ngspice on the netlist of the same operating point. For ngspice
 * both the time of a process (read, set up, solve, print) and the time of one more solution within a process that is running;
 * it is given the temperatures and start values near the solution, and works to its own tolerances, which are wider.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class NgspiceBenchmark {
    private static final int LOADS = 60;
    private static final int REPEATS = 1000;

    private Network network;
    private Path once;
    private Path many;

    @Setup
    public void write() throws IOException {
        network = SyntheticVehicle.of(LOADS);
        OperatingPoint point = FlowSolver.solve(network, FlowOptions.standard(), new BasicMonitor());
        String circuit = "* 60 loads\n" + SpiceNetlist.circuit(point, FlowOptions.standard(), "") + ".control\n";
        once = Files.writeString(Files.createTempFile("once", ".cir"), circuit + "op\nprint allv\nquit\n.endc\n.end\n");
        many = Files.writeString(Files.createTempFile("many", ".cir"),
                circuit + "repeat " + REPEATS + "\nop\ndestroy all\nend\nquit\n.endc\n.end\n");
    }

    @TearDown
    public void delete() throws IOException {
        Files.deleteIfExists(once);
        Files.deleteIfExists(many);
    }

    /** The engine. */
    @Benchmark
    public OperatingPoint engine() {
        return FlowSolver.solve(network, FlowOptions.standard(), new BasicMonitor());
    }

    /** A process of ngspice for one operating point. */
    @Benchmark
    public int ngspiceProcess() throws IOException, InterruptedException {
        return run(once);
    }

    /** One of many operating points within one process of ngspice. */
    @Benchmark
    @OperationsPerInvocation(REPEATS)
    public int ngspiceSolution() throws IOException, InterruptedException {
        return run(many);
    }

    private static int run(Path deck) throws IOException, InterruptedException {
        int exit = new ProcessBuilder("ngspice", "-b", deck.toString()).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor();
        if (exit != 0) {
            throw new IOException("ngspice ended with " + exit);
        }
        return exit;
    }
}
