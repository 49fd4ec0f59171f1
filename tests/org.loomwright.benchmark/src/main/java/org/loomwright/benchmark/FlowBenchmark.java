// SPDX-License-Identifier: EPL-2.0
package org.loomwright.benchmark;

import java.util.concurrent.TimeUnit;
import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.flow.FlowSolver;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.flow.OperatingPoint;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One operating point of a network: everything from the network on, that is checking it, ordering, states, temperatures. The
 * temperatures are sought, which a circuit simulator given them does not have to do.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class FlowBenchmark {
    @Param({"60", "500", "2000", "8000"})
    public int loads;

    private Network network;

    @Setup
    public void build() {
        network = SyntheticVehicle.of(loads);
    }

    @Benchmark
    public OperatingPoint operatingPoint() {
        return FlowSolver.solve(network, FlowOptions.standard(), new BasicMonitor());
    }
}
