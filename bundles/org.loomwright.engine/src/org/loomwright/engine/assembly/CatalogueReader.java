// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.engine.assembly.Catalogue.CableType;
import org.loomwright.engine.assembly.Catalogue.ProtectorType;
import org.loomwright.engine.assembly.Plan.ProtectorOption;
import org.loomwright.engine.assembly.Plan.SectionOption;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.CableRow;
import org.loomwright.model.parts.ConductorMaterial;
import org.loomwright.model.parts.Named;
import org.loomwright.model.parts.Part;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.parts.ProtectorPart;

/**
 * Reads a {@link Catalogue} from libraries and finds the types of parts in it. Used by the thread that owns the model.
 */
final class CatalogueReader {
    /** Resistivity of annealed copper at 20 degrees Celsius, ohm mm2/m; IEC 60028. */
    private static final double COPPER_OHM_MM2_PER_M = 0.017241;
    /** Resistivity of hard-drawn aluminium wire at 20 degrees Celsius, ohm mm2/m; IEC 60889. */
    private static final double ALUMINIUM_OHM_MM2_PER_M = 0.028264;

    private final TableReader tables = new TableReader();
    private final Map<CablePart, Integer> cableAt = new IdentityHashMap<>();
    private final Map<ProtectorPart, Integer> protectorAt = new IdentityHashMap<>();
    private final Map<CablePart, CableType> strayCables = new IdentityHashMap<>();
    private final Map<ProtectorPart, ProtectorType> strayProtectors = new IdentityHashMap<>();
    private final Map<String, Integer> cableNames = new HashMap<>();
    private final Map<String, Integer> protectorNames = new HashMap<>();
    private final Catalogue catalogue;

    /**
     * Reads libraries and those they use.
     *
     * @param libraries the vehicle's libraries
     * @param earlier   a catalogue that is taken instead when it says the same; may be {@link Catalogue#EMPTY}
     */
    CatalogueReader(List<PartsLibrary> libraries, Catalogue earlier) {
        List<CablePart> cables = new ArrayList<>();
        List<ProtectorPart> protectors = new ArrayList<>();
        for (PartsLibrary library : withUsed(libraries)) {
            cables.addAll(library.getCables());
            protectors.addAll(library.getProtectors());
        }
        cables.forEach(part -> cableNames.merge(String.valueOf(part.getName()), 1, Integer::sum));
        protectors.forEach(part -> protectorNames.merge(String.valueOf(part.getName()), 1, Integer::sum));
        List<CableType> cableTypes = new ArrayList<>();
        for (CablePart part : cables) {
            cableAt.put(part, cableTypes.size());
            cableTypes.add(read(part));
        }
        Map<String, List<ProtectorOption>> alike = byForm(protectors);
        List<ProtectorType> protectorTypes = new ArrayList<>();
        for (ProtectorPart part : protectors) {
            protectorAt.put(part, protectorTypes.size());
            protectorTypes.add(read(part, alike.getOrDefault(String.valueOf(part.getForm()), List.of())));
        }
        Catalogue read = new Catalogue(cableTypes, protectorTypes);
        catalogue = read.equals(earlier) ? earlier : read;
    }

    /** What the libraries say. */
    Catalogue catalogue() {
        return catalogue;
    }

    /** The type of a cable part, also of one outside the libraries. */
    CableType cable(CablePart part) {
        Integer at = cableAt.get(part);
        return at != null ? catalogue.cables().get(at) : strayCables.computeIfAbsent(part, this::read);
    }

    /** The type of a protector part, also of one outside the libraries. */
    ProtectorType protector(ProtectorPart part) {
        Integer at = protectorAt.get(part);
        return at != null
                ? catalogue.protectors().get(at)
                : strayProtectors.computeIfAbsent(part, p -> read(p, List.of()));
    }

    /** The smallest protector on offer in a form; null where the libraries have none that states its rating. */
    ProtectorType smallest(String form) {
        return catalogue.protectors().stream().filter(type -> form.equals(type.form()) && !type.alike().isEmpty())
                .min(Comparator.comparingDouble(ProtectorType::ratingA)).orElse(null);
    }

    /** The curve of a protector that is built into a device. */
    Plan.FuseCurve curve(org.loomwright.model.parts.FuseCurve curve) {
        return tables.curve(curve);
    }

    private static List<PartsLibrary> withUsed(List<PartsLibrary> libraries) {
        Set<PartsLibrary> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        List<PartsLibrary> all = new ArrayList<>();
        List<PartsLibrary> open = new ArrayList<>(libraries);
        for (int i = 0; i < open.size(); i++) {
            PartsLibrary library = open.get(i);
            if (!library.eIsProxy() && seen.add(library)) {
                all.add(library);
                open.addAll(library.getUses());
            }
        }
        return all;
    }

    private CableType read(CablePart part) {
        List<SectionOption> options = new ArrayList<>();
        for (CableRow row : part.getRows()) {
            if (row.getSectionMm2() != null && row.getSectionMm2().signum() > 0) {
                options.add(read(row, part.isSetConductor() ? part.getConductor() : ConductorMaterial.COPPER));
            }
        }
        options.sort(Comparator.comparingDouble(SectionOption::sectionMm2));
        return new CableType(nameOf(part, cableNames), part.getSource(), part.getInsulation(), Decimals.of(part.getMaxC()),
                Decimals.of(part.getShortTimeMaxC()), part.getCores() == null ? 1 : part.getCores(),
                Decimals.yes(part.getSheathed()), options, tables.ampacity(part.getAmpacity()),
                tables.grouping(part.getGrouping()));
    }

    /**
     * A row without nominal resistance takes that of a solid wire of its section (resistivity over section), which is the
     * least it can have; the nominal figure only serves the largest fault.
     */
    private static SectionOption read(CableRow row, ConductorMaterial metal) {
        double section = row.getSectionMm2().doubleValue();
        double most = Decimals.thousandth(row.getR20MaxMilliohmPerM());
        double solid = (metal == ConductorMaterial.ALUMINIUM ? ALUMINIUM_OHM_MM2_PER_M : COPPER_OHM_MM2_PER_M) / section;
        double nominal = row.getR20NominalMilliohmPerM() == null
                ? solid
                : Decimals.thousandth(row.getR20NominalMilliohmPerM());
        return new SectionOption(section, most, nominal, Decimals.of(row.getOuterDiameterMm()),
                Decimals.of(row.getMassGPerM()), Decimals.of(row.getPricePerM()));
    }

    private ProtectorType read(ProtectorPart part, List<ProtectorOption> alike) {
        return new ProtectorType(nameOf(part, protectorNames), part.isSetKind() ? part.getKind().getLiteral() : "fuse",
                part.getForm(), Decimals.of(part.getRatingA()), Decimals.of(part.getRatedV()),
                Decimals.of(part.getBreakingA()), Decimals.thousandth(part.getMilliohm()), tables.curve(part.getCurve()),
                alike);
    }

    private Map<String, List<ProtectorOption>> byForm(List<ProtectorPart> protectors) {
        Map<String, List<ProtectorOption>> byForm = new HashMap<>();
        for (ProtectorPart part : protectors) {
            if (part.getRatingA() != null && part.getForm() != null) {
                byForm.computeIfAbsent(part.getForm(), form -> new ArrayList<>())
                        .add(new ProtectorOption(nameOf(part, protectorNames), part.getRatingA().doubleValue(),
                                Decimals.of(part.getRatedV()), Decimals.of(part.getBreakingA()),
                                Decimals.thousandth(part.getMilliohm()), tables.curve(part.getCurve()),
                                Decimals.of(part.getPrice())));
            }
        }
        byForm.replaceAll((form, options) -> options.stream().sorted(Comparator.comparingDouble(ProtectorOption::ratingA)
                .thenComparing(ProtectorOption::part, Comparator.nullsFirst(Comparator.naturalOrder()))).toList());
        return byForm;
    }

    private static String nameOf(Part part, Map<String, Integer> names) {
        boolean ambiguous = names.getOrDefault(String.valueOf(part.getName()), 0) > 1;
        return ambiguous && part.eContainer() instanceof Named library ? library.getName() + "/" + part.getName()
                : part.getName();
    }
}
