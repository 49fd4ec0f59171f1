// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A small fleet on disk: a vehicle, a parts library and a practice, all valid. */
public final class Fleet {
    /** A parts library; name and further content are put in. */
    public static final String PARTS = """
            <?xml version="1.0" encoding="UTF-8"?>
            <parts:PartsLibrary xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" \
            xmlns:parts="http://loomwright.org/parts/1" name="base" format="1.0">
              <ampacityTables name="open-air" counts="circuits" referenceC="30" maxC="105">
                <points sectionMm2="2.5" amps="40"/>
              </ampacityTables>
              <cables name="single" cores="1" ampacity="open-air">
                <rows sectionMm2="2.5" r20MaxMilliohmPerM="7.60"/>
                <rows sectionMm2="4" r20MaxMilliohmPerM="4.71"/>
              </cables>
              <cables name="twin" cores="2" colours="RD BK" ampacity="open-air"/>
              <protectors name="blade-10" kind="fuse" form="blade" ratingA="10"/>
              <protectors name="strip-60" kind="fuse" form="strip" ratingA="60"/>
              <devices name="lamp" kind="lamp">
                <terminals name="L+" role="plus"/>
                <terminals name="L-" role="minus"/>
                <demands name="D" a="L+" b="L-" law="power" watts="20" refV="12"/>
              </devices>
              <devices name="battery" kind="battery">
                <terminals name="30" role="plus"/>
                <terminals name="31" role="minus"/>
                <cells name="C" a="30" b="31" nominalV="12"/>
              </devices>
              <devices name="box" kind="box">
                <terminals name="30" role="plus"/>
                <terminals name="1" role="plus"/>
                <terminals name="2" role="plus"/>
                <terminals name="3" role="plus"/>
                <ways name="1" from="30" out="1" forms="blade"/>
                <ways name="2" from="30" out="2" forms="blade"/>
                <ways name="3" from="30" out="3" forms="blade"/>
              </devices>
              <devices name="hand-switch" kind="switch">
                <terminals name="1" role="plus"/>
                <terminals name="2" role="plus"/>
                <contacts name="S" a="1" b="2" rest="open" driver="hand"/>
              </devices>
              <straps name="braid" sectionMm2="25"/>
            </parts:PartsLibrary>
            """;

    /** A practice. */
    public static final String PRACTICE = """
            <?xml version="1.0" encoding="UTF-8"?>
            <practice:Practice xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" \
            xmlns:practice="http://loomwright.org/practice/1" name="team" format="1.0">
              <limits name="drop-class.critical" value="0.030" unit="1" source="common practice"/>
            </practice:Practice>
            """;

    /** A vehicle with two arrangements, each with a device F1 and a cable W1. */
    public static final String VEHICLE = """
            <?xml version="1.0" encoding="UTF-8"?>
            <vehicle:Vehicle xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" \
            xmlns:vehicle="http://loomwright.org/vehicle/1" name="heron" label="Heron &amp; crew" note="first&#xA;second" \
            format="1.0" returnPolicy="allowed" libraries="parts/base.parts#/" practice="team.practice#/" adopted="central">
              <domains name="house" nominalV="12.0" source="G1.30"/>
              <zones name="cabin" ambientMaxC="45"/>
              <places name="hub" xMm="1000" yMm="-20.50" zMm="800" zone="cabin"/>
              <places name="rear" xMm="200" yMm="0" zMm="800" zone="cabin"/>
              <places name="nose" xMm="4000" yMm="0" zMm="700"/>
              <bodies name="chassis" material="steel"/>
              <bodies name="engine" material="cast iron"/>
              <runs name="R1" from="hub" to="rear" lengthMm="900" zone="cabin" body="chassis"/>
              <runs name="R2" from="nose" to="hub"/>
              <ducts name="D1" runs="R1 R2" pullingPoints="hub"/>
              <passages name="P1" run="R2" atMm="300"/>
              <bodyLinks name="L1" a="chassis" b="engine"/>
              <earthPoints name="XE1" body="chassis" place="hub"/>
              <earthPoints name="XE2" body="engine" place="nose"/>
              <bonds name="WE1" a="XE1" b="XE2" part="braid"/>
              <devices name="G1" part="battery" place="hub"/>
              <devices name="E1" part="lamp" place="rear"/>
              <devices name="E2" part="lamp" run="R1" atMm="450"/>
              <devices name="S1" part="hand-switch" place="rear"/>
              <cables name="W0" part="single" sectionMm2="4" sectionBy="person" existing="true">
                <cores name="1" colour="BK" a="G1.31" b="XE1"/>
              </cables>
              <cases name="parked" kind="parked" ignition="off">
                <ambients zone="cabin" ambientC="5"/>
                <batteries device="G1" charge="0.80"/>
                <positions device="S1" closed="true"/>
                <demands device="E1"/>
                <demands device="E2" element="D" factor="0.5" onS="10" periodS="60"/>
              </cases>
              <days name="weekday">
                <steps case="parked" hours="8"/>
              </days>
              <arrangements name="central" status="adopted">
                <devices name="F1" part="box" place="rear">
                  <ways name="1" protector="blade-10"/>
                  <ways name="3" protector="blade-10" ratingBy="person"/>
                </devices>
                <cables name="W1" part="twin" path="R1 R2" ducts="D1">
                  <cores name="RD" a="F1.1" b="E1.L+"/>
                  <cores name="BK" a="XE1" b="E1.L-"/>
                </cables>
                <cables name="W2" part="single" sectionMm2="2.5" sectionBy="sizing">
                  <cores name="1" a="G1.30" b="F1.30"/>
                </cables>
                <placements device="S1" place="hub"/>
                <returns device="E1" by="own"/>
              </arrangements>
              <arrangements name="spread" basedOn="central" status="draft">
                <devices name="F1" part="box" place="hub">
                  <ways name="2" protector="blade-10"/>
                </devices>
                <cables name="W1" part="single">
                  <cores name="1" a="F1.2" b="E2.L+"/>
                </cables>
              </arrangements>
              <readingSets name="first" when="2026-05-01" arrangement="central">
                <readings a="G1.30" b="G1.31" kind="voltage" value="12.63" unit="V"/>
              </readingSets>
              <waivers rule="drop-class" element="central/W1" reason="short trips only" who="owner" when="2026-05-02"/>
              <waivers rule="terminal-fit" element="central/F1.1" reason="measured" who="owner" when="2026-05-02"/>
              <sheets name="line-central" diagram="line" arrangement="central">
                <items element="G1" x="10" y="20"/>
                <items element="central/F1" x="30" y="20"/>
                <items element="central/W1/RD" x="0" y="0" bends="10,20 30,20"/>
                <items element="parked/@demands.1" x="5" y="5"/>
              </sheets>
            </vehicle:Vehicle>
            """;

    private final Path folder;

    /** Writes the fleet into a folder. */
    public Fleet(Path folder) {
        this.folder = folder;
        write("parts/base.parts", PARTS);
        write("team.practice", PRACTICE);
        write("heron.vehicle", VEHICLE);
    }

    /** The folder. */
    public Path folder() {
        return folder;
    }

    /** The vehicle's file. */
    public Path vehicle() {
        return folder.resolve("heron.vehicle");
    }

    /** Writes a file of the fleet. */
    public Path write(String name, String text) {
        return write(name, text.getBytes(StandardCharsets.UTF_8));
    }

    Path write(String name, byte[] bytes) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            return Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The vehicle's text with one part of it replaced, which must be there. */
    public static String with(String old, String replacement) {
        return replaced(VEHICLE, old, replacement);
    }

    static String replaced(String text, String old, String replacement) {
        if (!text.contains(old)) {
            throw new IllegalArgumentException("not in the text: " + old);
        }
        return text.replace(old, replacement);
    }
}
