// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import java.nio.charset.StandardCharsets;
import org.eclipse.swt.dnd.ByteArrayTransfer;
import org.eclipse.swt.dnd.TransferData;

/** The mark on the system's clipboard that says which fragment of this workbench was copied last. */
final class FragmentTransfer extends ByteArrayTransfer {
    private static final String TYPE = "org.loomwright.fragment";
    private static final FragmentTransfer INSTANCE = new FragmentTransfer();

    private FragmentTransfer() {
    }

    static FragmentTransfer instance() {
        return INSTANCE;
    }

    @Override
    protected int[] getTypeIds() {
        return new int[] {registerType(TYPE)};
    }

    @Override
    protected String[] getTypeNames() {
        return new String[] {TYPE};
    }

    @Override
    protected void javaToNative(Object mark, TransferData data) {
        if (mark instanceof String text) {
            super.javaToNative(text.getBytes(StandardCharsets.UTF_8), data);
        }
    }

    @Override
    protected Object nativeToJava(TransferData data) {
        return super.nativeToJava(data) instanceof byte[] bytes ? new String(bytes, StandardCharsets.UTF_8) : null;
    }
}
