// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.List;
import org.loomwright.engine.assembly.Plan.Ampacity;
import org.loomwright.engine.assembly.Plan.FuseCurve;
import org.loomwright.engine.assembly.Plan.Grouping;
import org.loomwright.engine.assembly.Plan.ProtectorOption;
import org.loomwright.engine.assembly.Plan.SectionOption;

/**
 * What the libraries of a vehicle say about cables and protectors: immutable and equal by content, so that plans of several
 * vehicles and of one vehicle again and again share one.
 *
 * @param cables     cable types, in the order of the libraries
 * @param protectors protector types, in the order of the libraries
 */
public record Catalogue(List<CableType> cables, List<ProtectorType> protectors) {
    /** Nothing. */
    public static final Catalogue EMPTY = new Catalogue(List.of(), List.of());

    public Catalogue {
        cables = List.copyOf(cables);
        protectors = List.copyOf(protectors);
    }

    /**
     * A cable type; numbers that the part does not state are NaN.
     *
     * @param name     name, with its library where the name alone is ambiguous
     * @param options  sections on offer, rising
     * @param ampacity rating table, or null
     * @param grouping table for several together, or null
     */
    public record CableType(String name, String source, String insulation, double maxC, double shortTimeMaxC, int cores,
            boolean sheathed, List<SectionOption> options, Ampacity ampacity, Grouping grouping) {
        public CableType {
            options = List.copyOf(options);
        }

        /** The section on offer, or null. */
        public SectionOption option(double sectionMm2) {
            for (SectionOption option : options) {
                if (option.sectionMm2() == sectionMm2) {
                    return option;
                }
            }
            return null;
        }
    }

    /**
     * A fuse or breaker; ohm is its cold resistance, NaN when not stated; curve may be null.
     *
     * @param alike parts of the same form, ratings rising, itself included
     */
    public record ProtectorType(String name, String kind, String form, double ratingA, double ratedV, double breakingA,
            double ohm, FuseCurve curve, List<ProtectorOption> alike) {
        public ProtectorType {
            alike = List.copyOf(alike);
        }
    }
}
