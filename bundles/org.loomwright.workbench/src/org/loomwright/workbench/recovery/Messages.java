// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Changes_many;
    public static String Changes_one;
    public static String Differences_added;
    public static String Differences_changed;
    public static String Differences_none;
    public static String Differences_others;
    public static String Differences_removed;
    public static String Differences_vehicle;
    public static String Disk_changed;
    public static String Disk_deleted;
    public static String Disk_faults;
    public static String Disk_keep;
    public static String Disk_mine;
    public static String Disk_reload;
    public static String Disk_reloadLosing;
    public static String Disk_reloaded;
    public static String Disk_theirs;
    public static String Recovery_broken;
    public static String Recovery_differs;
    public static String Recovery_discard;
    public static String Recovery_fileChanged;
    public static String Recovery_found;
    public static String Recovery_gone;
    public static String Recovery_later;
    public static String Recovery_restore;
    public static String Recovery_restored;
    public static String Recovery_title;
    public static String Recovery_writeBack;
    public static String Repair_changedOutside;
    public static String Repair_head;
    public static String Repair_notText;

    static {
        NLS.initializeMessages("org.loomwright.workbench.recovery.messages", Messages.class);
    }

    private Messages() {
    }

    /** A text with its gaps filled; numbers as they are. */
    static String bound(String text, Object... values) {
        String[] filled = new String[values.length];
        for (int i = 0; i < values.length; i++) {
            filled[i] = String.valueOf(values[i]);
        }
        return NLS.bind(text, filled);
    }

    /** So many changes, in words. */
    static String changes(int count) {
        return count == 1 ? Changes_one : bound(Changes_many, count);
    }
}
