// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.properties;

import java.math.BigDecimal;
import org.eclipse.emf.ecore.EAnnotation;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.loomwright.engine.result.WireGauge;
import org.loomwright.model.parts.PartsPackage;
import org.loomwright.model.rules.Names;
import org.loomwright.workbench.editor.Words;
import org.loomwright.workbench.preference.ShownFigures;

/** Values of one feature as text, with the unit and the range that the model states for it. */
final class FeatureText {
    private static final String RANGE = "http://loomwright.org/range";
    private static final String SECTION = "mm2";
    private final EStructuralFeature feature;
    private final ShownFigures units;

    FeatureText(EStructuralFeature feature, ShownFigures units) {
        this.feature = feature;
        this.units = units;
    }

    /** The unit as people write it; empty for none. */
    String unit() {
        String unit = detail("unit");
        return unit == null ? "" : SECTION.equals(unit) && units.awg() ? Words.of("properties.gauge") : units.unit(unit);
    }

    /** True when a word stands for the unit, as in names such as lengthMm. */
    boolean isUnit(String word) {
        String unit = detail("unit");
        return unit != null && (unit.equalsIgnoreCase(word) || unit.equals("deg" + word));
    }

    /** A value as text. */
    String shown(Object value) {
        if (value == null) {
            return "";
        }
        if (!(value instanceof BigDecimal number)) {
            return value.toString();
        }
        String unit = detail("unit");
        String gauge = SECTION.equals(unit) && units.awg() ? WireGauge.approximately(number.doubleValue()) : null;
        if (gauge != null && WireGauge.written(gauge) != null) {
            return gauge;
        }
        return (unit == null ? number : units.shown(number, unit)).toPlainString();
    }

    /** Why a text is refused; null when it can be taken. */
    String refusal(String text) {
        String wanted = text == null ? "" : text.strip();
        if (feature == PartsPackage.Literals.NAMED__NAME) {
            return Names.wellFormed(wanted) ? null : Words.of("properties.name", wanted);
        }
        if (wanted.isEmpty()) {
            return null;
        }
        try {
            Object value = value(wanted);
            return value instanceof BigDecimal number ? outside(number) : null;
        } catch (RuntimeException unreadable) {
            return unit().isEmpty() ? Words.of("properties.number", wanted) : Words.of("properties.figure", wanted, unit());
        }
    }

    private String outside(BigDecimal value) {
        BigDecimal min = bound("min");
        BigDecimal max = bound("max");
        if ((min == null || value.compareTo(min) >= 0) && (max == null || value.compareTo(max) <= 0)) {
            return null;
        }
        if (min != null && max != null) {
            return Words.of("properties.range", shown(value), shown(min), shown(max), unit());
        }
        return min != null ? Words.of("properties.from", shown(value), shown(min), unit())
                : Words.of("properties.to", shown(value), shown(max), unit());
    }

    /**
     * The value of a text; null for an empty one.
     *
     * @throws RuntimeException for what cannot be read
     */
    Object value(String text) {
        String wanted = text == null ? "" : text.strip();
        if (wanted.isEmpty()) {
            return null;
        }
        String unit = detail("unit");
        if (unit != null && feature.getEType().getInstanceClass() == BigDecimal.class) {
            return units.read(wanted, unit);
        }
        return EcoreUtil.createFromString((EDataType) feature.getEType(), wanted);
    }

    private BigDecimal bound(String key) {
        String text = detail(key);
        return text == null ? null : new BigDecimal(text);
    }

    private String detail(String key) {
        EAnnotation range = feature.getEAnnotation(RANGE);
        return range == null ? null : range.getDetails().get(key);
    }
}
