// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import org.loomwright.model.files.VehicleFiles;

/** The practice at the end of every chain of practices, read once: it is part of the program. */
final class CommonPractice {
    private static final Practice READ = PracticeReader.read(new VehicleFiles().commonPractice(), new Problems());

    private CommonPractice() {
    }

    static Practice get() {
        return READ;
    }
}
