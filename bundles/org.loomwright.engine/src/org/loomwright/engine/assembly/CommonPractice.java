// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.practice.PracticePackage;

/** The practice that comes with the program. */
final class CommonPractice {
    private CommonPractice() {
    }

    static Practice read() {
        PracticePackage.eINSTANCE.getName();
        XMIResourceImpl resource = new XMIResourceImpl();
        try (InputStream in = PracticePackage.class.getResourceAsStream("/org/loomwright/model/files/common.practice")) {
            resource.load(in, null);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return (Practice) resource.getContents().get(0);
    }
}
