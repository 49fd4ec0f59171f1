// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.vehicle.Setting;

/** The values set on one device; keeps book of which were asked for, so that misspelt ones are told. */
final class DeviceSettings {
    private final Map<Key, BigDecimal> values = new HashMap<>();
    private final Set<Key> asked = new HashSet<>();

    private record Key(String element, String quantity) {
    }

    DeviceSettings(List<Setting> settings) {
        for (Setting setting : settings) {
            if (setting.getValue() != null) {
                values.put(new Key(setting.getElement(), setting.getQuantity()), setting.getValue());
            }
        }
    }

    /** The value set on the device, or {@code stated} by the part. */
    BigDecimal value(String element, String quantity, BigDecimal stated) {
        if (values.isEmpty()) {
            return stated;
        }
        Key key = new Key(element, quantity);
        asked.add(key);
        return values.getOrDefault(key, stated);
    }

    /** True when the device sets this value. */
    boolean sets(String element, String quantity) {
        return !values.isEmpty() && values.containsKey(new Key(element, quantity));
    }

    /** Those of {@code settings} that nothing asked for. */
    List<Setting> unused(List<Setting> settings) {
        return settings.stream().filter(s -> s.getValue() != null)
                .filter(s -> !asked.contains(new Key(s.getElement(), s.getQuantity()))).toList();
    }
}
