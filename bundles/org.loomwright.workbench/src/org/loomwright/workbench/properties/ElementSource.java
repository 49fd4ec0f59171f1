// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.provider.IItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.IItemPropertySource;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.IPropertySource;
import org.loomwright.model.edits.VehicleEdits;
import org.loomwright.model.parts.Named;
import org.loomwright.model.parts.PartsPackage;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.Words;

/** The features of one element as properties, changed by commands that can be undone. */
final class ElementSource implements IPropertySource {
    private final VehicleDocument document;
    private final EObject element;
    private final List<FeatureProperty> properties = new ArrayList<>();

    ElementSource(VehicleDocument document, EObject element) {
        this.document = document;
        this.element = element;
        Object adapter = document.domain().getAdapterFactory().adapt(element, IItemPropertySource.class);
        if (adapter instanceof IItemPropertySource source) {
            for (IItemPropertyDescriptor descriptor : source.getPropertyDescriptors(element)) {
                if (descriptor.getFeature(element) instanceof EStructuralFeature feature && !feature.isMany()) {
                    properties.add(new FeatureProperty(element, feature, descriptor,
                            document.domain().getAdapterFactory(), element.eResource() == document.vehicle().eResource()));
                }
            }
        }
    }

    @Override
    public IPropertyDescriptor[] getPropertyDescriptors() {
        return properties.stream().map(FeatureProperty::descriptor).toArray(IPropertyDescriptor[]::new);
    }

    @Override
    public Object getPropertyValue(Object id) {
        FeatureProperty property = property(id);
        return property == null ? null : property.shown(element.eGet(property.feature()));
    }

    @Override
    public boolean isPropertySet(Object id) {
        FeatureProperty property = property(id);
        return property != null && element.eIsSet(property.feature());
    }

    @Override
    public void resetPropertyValue(Object id) {
        FeatureProperty property = property(id);
        if (property != null && property.feature() != PartsPackage.Literals.NAMED__NAME) {
            unset(property.feature());
        }
    }

    @Override
    public void setPropertyValue(Object id, Object shown) {
        FeatureProperty property = property(id);
        // a figure shown in another unit is rounded there: as long as its text stays it stays
        if (property == null || Objects.equals(shown, property.shown(element.eGet(property.feature())))) {
            return;
        }
        EStructuralFeature feature = property.feature();
        Object value = property.value(shown);
        if (Objects.equals(value, element.eGet(feature)) && (value != null || !element.eIsSet(feature))) {
            return;
        }
        if (feature == PartsPackage.Literals.NAMED__NAME) {
            document.run(Words.of("edit.set", property.label()), () -> VehicleEdits.rename((Named) element, (String) value));
            document.reveal(org.loomwright.model.files.Fragments.of(element));
        } else if (value == null) {
            unset(feature);
        } else {
            Command command = SetCommand.create(document.domain(), element, feature, value);
            document.domain().getCommandStack().execute(command);
        }
    }

    private void unset(EStructuralFeature feature) {
        Object empty = feature instanceof EAttribute && feature.isUnsettable() ? SetCommand.UNSET_VALUE : null;
        if (empty == null && feature.getEType().getDefaultValue() != null) {
            empty = feature.getDefaultValue();
        }
        document.domain().getCommandStack().execute(SetCommand.create(document.domain(), element, feature, empty));
    }

    @Override
    public Object getEditableValue() {
        return element;
    }

    private FeatureProperty property(Object id) {
        return properties.stream().filter(each -> each.feature().getName().equals(id)).findFirst().orElse(null);
    }
}
