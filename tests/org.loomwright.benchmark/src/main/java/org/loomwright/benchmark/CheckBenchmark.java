// SPDX-License-Identifier: EPL-2.0
package org.loomwright.benchmark;

import java.util.concurrent.TimeUnit;
import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.check.Check;
import org.loomwright.engine.check.CheckOptions;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.model.vehicle.Vehicle;
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

/** Assembly of a vehicle, and its full check: all states solved, all rules, verdicts; the file is read before. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class CheckBenchmark {
    @Param({"60"})
    public int loads;

    private Vehicle vehicle;
    private AssemblyResult assembled;

    @Setup
    public void open() {
        vehicle = BenchVehicle.open(loads);
        assembled = Assembly.assemble(vehicle, null, null);
        if (!assembled.problems().isEmpty()) {
            throw new IllegalStateException(assembled.problems().toString());
        }
    }

    @Benchmark
    public AssemblyResult assembly() {
        return Assembly.assemble(vehicle, null, null);
    }

    @Benchmark
    public StudyResult fullCheck() {
        return Check.run(assembled.plan(), assembled.problems(), CheckOptions.all(), new BasicMonitor());
    }
}
