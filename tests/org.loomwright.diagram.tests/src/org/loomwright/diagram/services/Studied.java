// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.Catalogue;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.check.Check;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.CheckOptions;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Vehicles of the demo fleet, checked once, as requests for drawings. Tests leave the models as they are. */
public final class Studied {
    private static final Path FLEET = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet");

    private static final Map<String, List<DrawingRequest>> KNOWN = new LinkedHashMap<>();

    private Studied() {
    }

    /** Every arrangement of a vehicle of the fleet. */
    public static synchronized List<DrawingRequest> fleet(String name) {
        return KNOWN.computeIfAbsent(name, Studied::read);
    }

    private static List<DrawingRequest> read(String name) {
        return all(new VehicleFiles().openVehicle(FLEET.resolve(name + ".vehicle")).root());
    }

    /** Every arrangement of a vehicle. */
    public static List<DrawingRequest> all(Vehicle vehicle) {
        List<DrawingRequest> requests = new ArrayList<>();
        for (Arrangement arrangement : vehicle.getArrangements()) {
            Plan plan = Assembly.assemble(vehicle, arrangement, null, Catalogue.EMPTY).plan();
            CheckContext context = new CheckContext(plan, CaseSolver.solveAll(plan, new BasicMonitor()), NetFinder.find(plan));
            StudyView study = StudyView.of(context, Check.over(context, CheckOptions.all(), new BasicMonitor()).findings());
            requests.add(new DrawingRequest(vehicle, arrangement, study, null, null, DrawingPreferences.metric()));
        }
        return requests;
    }
}
