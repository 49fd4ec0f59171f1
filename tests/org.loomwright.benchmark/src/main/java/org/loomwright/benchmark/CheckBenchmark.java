// SPDX-License-Identifier: EPL-2.0
package org.loomwright.benchmark;

import java.util.concurrent.TimeUnit;
import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.check.Check;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.CheckOptions;
import org.loomwright.engine.earth.EarthStudy;
import org.loomwright.engine.earth.EarthTable;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.protection.ProtectionStudy;
import org.loomwright.engine.protection.ProtectionTable;
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

/**
 * Assembly of a vehicle, its full check (all states solved, all rules, verdicts), and the studies of faults and lost bonds; the
 * file is read before.
 */
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
    private CheckContext solved;

    @Setup
    public void open() {
        vehicle = BenchVehicle.open(loads);
        assembled = Assembly.assemble(vehicle, null, null);
        if (!assembled.problems().isEmpty()) {
            throw new IllegalStateException(assembled.problems().toString());
        }
        solved = new CheckContext(assembled.plan(), CaseSolver.solveAll(assembled.plan(), new BasicMonitor()),
                NetFinder.find(assembled.plan()), assembled.problems());
    }

    @Benchmark
    public AssemblyResult assembly() {
        return Assembly.assemble(vehicle, null, null);
    }

    @Benchmark
    public StudyResult fullCheck() {
        return Check.run(assembled.plan(), assembled.problems(), CheckOptions.all(), new BasicMonitor());
    }

    /** All faults of all conductors with their clearing, then all losses of bonds; the cases are solved before. */
    @Benchmark
    public EarthTable faultsAndLosses() {
        ProtectionTable faults = ProtectionStudy.of(solved, new BasicMonitor());
        return EarthStudy.of(solved, faults, new BasicMonitor());
    }
}
