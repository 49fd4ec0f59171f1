// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

/** Large vehicles. */
final class ManyCables {
    private ManyCables() {
    }

    /** The fleet's vehicle with an arrangement of so many loads and cables, references before and after their targets. */
    static String vehicle(int cables) {
        StringBuilder text = new StringBuilder("  <arrangements name=\"large\">\n");
        for (int i = 0; i < cables; i++) {
            text.append("    <devices name=\"E").append(i).append("\" label=\"Load number ").append(i)
                    .append(" &amp; more\" part=\"lamp\" place=\"rear\"/>\n");
        }
        for (int i = 0; i < cables; i++) {
            text.append("    <cables name=\"W").append(i).append("\" part=\"twin\" path=\"R1 R2\">\n")
                    .append("      <cores name=\"RD\" a=\"F1.").append(i).append("\" b=\"E").append(i).append(".L+\"/>\n")
                    .append("      <cores name=\"BK\" a=\"XE1\" b=\"E").append(i).append(".L-\"/>\n    </cables>\n");
        }
        text.append("  </arrangements>\n");
        int at = Fleet.VEHICLE.indexOf("  <arrangements");
        String large = text.toString().replace("    <devices name=\"E0\"",
                "    <devices name=\"F1\"/>\n    <devices name=\"E0\"");
        return Fleet.VEHICLE.substring(0, at) + large + Fleet.VEHICLE.substring(at);
    }
}
