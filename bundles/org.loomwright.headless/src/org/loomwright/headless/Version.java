// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version of this program, from {@code version.properties} of the bundle. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() throws IOException {
        Properties properties = new Properties();
        try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
            properties.load(in);
        }
        return new String[] {"loomwright " + properties.getProperty("version")};
    }
}
