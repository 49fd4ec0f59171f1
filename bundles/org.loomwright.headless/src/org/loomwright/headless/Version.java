// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version of this program, from {@code version.properties} of the bundle. */
public final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() throws IOException {
        return new String[] {"loomwright " + version()};
    }

    /** Major and minor version, as office documents note it. */
    public static String majorMinor() throws IOException {
        String[] parts = version().split("\\.");
        return parts[0] + "." + parts[1];
    }

    private static String version() throws IOException {
        Properties properties = new Properties();
        try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
            properties.load(in);
        }
        return properties.getProperty("version");
    }
}
