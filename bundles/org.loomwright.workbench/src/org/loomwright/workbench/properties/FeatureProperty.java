// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.properties;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.provider.IItemLabelProvider;
import org.eclipse.emf.edit.provider.IItemPropertyDescriptor;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.ui.views.properties.ComboBoxPropertyDescriptor;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.PropertyDescriptor;
import org.eclipse.ui.views.properties.TextPropertyDescriptor;
import org.loomwright.workbench.editor.Words;
import org.loomwright.workbench.preference.ShownFigures;

/** One feature of an element as a property: text with a check at entry, or a choice. */
final class FeatureProperty {
    private static final String FLAG = "Flag";
    private final EStructuralFeature feature;
    private final IItemPropertyDescriptor item;
    private final EObject element;
    private final AdapterFactory factory;
    private final boolean changeable;
    private final FeatureText text;
    private final List<Object> choices = new ArrayList<>();

    FeatureProperty(EObject element, EStructuralFeature feature, IItemPropertyDescriptor item, AdapterFactory factory,
            boolean changeable) {
        this.element = element;
        this.feature = feature;
        this.item = item;
        this.factory = factory;
        this.changeable = changeable && item.canSetProperty(element);
        text = new FeatureText(feature, ShownFigures.current());
        choices();
    }

    EStructuralFeature feature() {
        return feature;
    }

    /** Its name without the unit that generated names end with. */
    String label() {
        String name = item.getDisplayName(element);
        int last = name.lastIndexOf(' ');
        return last > 0 && text.isUnit(name.substring(last + 1)) ? name.substring(0, last) : name;
    }

    private void choices() {
        if (feature.getEType() instanceof EEnum words) {
            choices.add(null);
            words.getELiterals().stream().map(EEnumLiteral::getInstance).forEach(choices::add);
        } else if (FLAG.equals(feature.getEType().getName())) {
            choices.addAll(Arrays.asList(null, Boolean.TRUE, Boolean.FALSE));
        } else if (feature instanceof org.eclipse.emf.ecore.EReference) {
            choices.add(null);
            Collection<?> possible = item.getChoiceOfValues(element);
            if (possible != null) {
                possible.stream().filter(each -> each != null).forEach(choices::add);
            }
        }
    }

    /** How the platform's property sheet edits it. */
    IPropertyDescriptor descriptor() {
        String name = text.unit().isEmpty() ? label() : Words.of("properties.unit", label(), text.unit());
        PropertyDescriptor descriptor;
        if (!changeable) {
            descriptor = new PropertyDescriptor(feature.getName(), name);
            descriptor.setLabelProvider(new LabelProvider());
        } else if (choices.isEmpty()) {
            descriptor = new TextPropertyDescriptor(feature.getName(), name);
            descriptor.setValidator(value -> text.refusal((String) value));
        } else {
            String[] words = choices.stream().map(this::words).toArray(String[]::new);
            descriptor = new ComboBoxPropertyDescriptor(feature.getName(), name, words);
            descriptor.setLabelProvider(new LabelProvider() {
                @Override
                public String getText(Object index) {
                    int at = index instanceof Integer number ? number : -1;
                    return at < 0 || at >= words.length ? "" : words[at];
                }
            });
        }
        descriptor.setCategory(item.getCategory(element));
        descriptor.setDescription(item.getDescription(element));
        return descriptor;
    }

    /** A value as the sheet takes it. */
    Object shown(Object value) {
        boolean set = !feature.isUnsettable() || element.eIsSet(feature);
        if (!changeable) {
            return set ? words(value) : "";
        }
        return choices.isEmpty() ? set ? text.shown(value) : "" : Math.max(0, choices.indexOf(set ? value : null));
    }

    /** What the sheet gave as a value of the model; null for none. */
    Object value(Object shown) {
        if (!choices.isEmpty()) {
            int at = shown instanceof Integer number ? number : 0;
            return at < 0 || at >= choices.size() ? null : choices.get(at);
        }
        return text.value((String) shown);
    }

    private String words(Object value) {
        if (value == null) {
            return Words.of("properties.unset");
        }
        if (value instanceof EObject object) {
            return factory.adapt(object, IItemLabelProvider.class) instanceof IItemLabelProvider labels ? labels.getText(object)
                    : object.toString();
        }
        return value instanceof Enumerator word ? word.getLiteral() : text.shown(value);
    }
}
