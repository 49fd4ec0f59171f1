// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.IntFunction;

/** Writes a plan as lines in which every index is replaced by the id it stands for, sorted: two plans that say the same agree. */
final class PlanText {
    private final Plan plan;

    private PlanText(Plan plan) {
        this.plan = plan;
    }

    static String of(Plan plan) {
        PlanText text = new PlanText(plan);
        TreeSet<String> lines = new TreeSet<>();
        for (List<?> list : List.of(plan.domains(), plan.zones(), plan.places(), plan.runs(), plan.bodies(), plan.bodyLinks(),
                plan.bonds(), plan.devices(), plan.terminals(), plan.elements(), plan.cables(), plan.conductors(),
                plan.cases(), plan.waivers())) {
            list.forEach(record -> lines.add(text.text((Record) record)));
        }
        return String.join("\n", lines);
    }

    private String text(Record record) {
        StringBuilder line = new StringBuilder(record.getClass().getSimpleName());
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            Object value;
            try {
                component.getAccessor().setAccessible(true);
                value = component.getAccessor().invoke(record);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
            line.append(' ').append(component.getName()).append('=').append(text(record, component.getName(), value));
        }
        return line.toString();
    }

    private String text(Record owner, String name, Object value) {
        if (value instanceof Integer index) {
            IntFunction<String> id = id(owner, name);
            return id == null ? value.toString() : index < 0 ? "none" : id.apply(index);
        }
        if (value instanceof List<?> list) {
            List<String> texts = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                String each = text(owner, name, list.get(i));
                texts.add("ambientC".equals(name) ? plan.zones().get(i).id() + ":" + each : each);
            }
            if (owner instanceof Plan.Case) {
                texts.sort(null);
            }
            return texts.toString();
        }
        return value instanceof Record record ? "{" + text(record) + "}" : String.valueOf(value);
    }

    private IntFunction<String> id(Record owner, String name) {
        return switch (name) {
            case "device", "mountedIn" -> i -> plan.devices().get(i).id();
            case "a", "b", "inA", "inB", "outA", "outB", "plus", "minus", "senseA", "senseB", "sourceTerminal" ->
                i -> plan.terminals().get(i).id();
            case "drivenBy", "shunt", "cell", "contact", "demand" -> i -> plan.elements().get(i).id();
            case "zone" -> i -> plan.zones().get(i).id();
            case "place", "from", "to" -> i -> plan.places().get(i).id();
            case "run", "path" -> i -> plan.runs().get(i).id();
            case "body", "bodyA", "bodyB" -> i -> plan.bodies().get(i).id();
            case "cable" -> i -> plan.cables().get(i).id();
            case "priority", "lugsMax", "cores", "loadedCores", "upTo" -> null;
            default -> throw new IllegalStateException("what does " + name + " of " + owner.getClass() + " count?");
        };
    }
}
