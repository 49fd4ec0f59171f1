// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.model.files.ReadFile;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/**
 * A small vehicle with a library and a stock of its own, written as text and read as every file is: 1000 mm of run R1 between
 * the places p and q, and R2 from q to s, 500 mm by its places. All figures are invented for the tests.
 */
public final class Shed {
    private static final String PARTS = """
              <cables name="single" label="Single core" orderCode="C-1" cores="1">
                <rows sectionMm2="1.5" r20MaxMilliohmPerM="12.7" massGPerM="16" pricePerM="0.40"/>
                <rows sectionMm2="2.5" r20MaxMilliohmPerM="7.60" massGPerM="26" pricePerM="0.60"/>
                <rows sectionMm2="16" r20MaxMilliohmPerM="1.16" massGPerM="160"/>
              </cables>
              <cables name="twin" label="Twin" cores="2" sheathed="true">
                <rows sectionMm2="2.5" r20MaxMilliohmPerM="7.60" massGPerM="62" pricePerM="1.35"/>
              </cables>
              <protectors name="blade-5" price="0.25" massG="1.5" kind="fuse" form="blade" ratingA="5"/>
              <protectors name="blade-10" price="0.30" massG="1.5" kind="fuse" form="blade" ratingA="10"/>
              <devices name="battery" label="Battery" price="95.00" massG="18500" kind="battery">
                <terminals name="30" role="plus" form="stud" studMm="8"/>
                <terminals name="31" role="minus" form="stud" studMm="8"/>
              </devices>
              <devices name="lamp" label="Lamp" price="12.49" massG="210" kind="lamp">
                <terminals name="L+" role="plus" form="lead"/>
                <terminals name="L-" role="minus" form="lead"/>
              </devices>
              <devices name="box" label="Fuse box" price="21.00" massG="310" kind="box">
                <terminals name="30" role="plus" form="stud" studMm="5"/>
                <terminals name="1" role="plus" form="tab"/>
                <terminals name="2" role="plus" form="tab"/>
                <terminals name="N1" role="minus" form="clamp" bar="N"/>
                <ways name="1" from="30" out="1" forms="blade"/>
                <ways name="2" from="30" out="2" forms="blade"/>
              </devices>
              <ducts name="conduit" form="closed" innerDiameterMm="20" massGPerM="55" pricePerM="1.10"/>
              <ducts name="channel" form="openable" innerWidthMm="40" innerHeightMm="40" massGPerM="330" pricePerM="3.20"/>
              <passages name="gland" price="1.40" massG="16" kind="gland"/>
              <ends name="lug" label="Lug M8" price="0.50" massG="5" kind="lug" studMm="8"/>
              <ends name="tab" price="0.08" massG="1" kind="tab"/>
              <straps name="strap-16" label="Strap" price="6.00" massG="90" sectionMm2="16" milliohmPerM="1.2"/>
            """;
    private static final String PLACES = """
              <places name="p" xMm="0" yMm="0" zMm="0"/>
              <places name="q" xMm="1000" yMm="0" zMm="0"/>
              <places name="s" xMm="1000" yMm="300" zMm="400"/>
              <bodies name="frame"/>
              <bodies name="shell"/>
              <runs name="R1" from="p" to="q" lengthMm="1000"/>
              <runs name="R2" from="q" to="s"/>
            """;
    private final Path folder;
    private String parts = PARTS;
    private String stock = "";
    private String uses = "";

    /** A shed in a folder. */
    public Shed(Path folder) {
        this.folder = folder;
    }

    /** More parts in the library. */
    public Shed parts(String more) {
        parts += more;
        return this;
    }

    /** Another library beside it, which the first one uses. */
    public Shed used(String name, String content) {
        write(name + ".parts", root("parts:PartsLibrary", "name=\"" + name + "\"", content));
        uses = " uses=\"" + name + ".parts#/\"";
        return this;
    }

    /** What lies in the garage. */
    public Shed stock(String content) {
        stock = content;
        return this;
    }

    /** The vehicle; devices, cables and the rest follow the places and runs in the order of the file. */
    public Vehicle vehicle(String content) {
        write("shed.parts", root("parts:PartsLibrary", "name=\"shed\"" + uses, parts));
        write("shed.stock", root("parts:Stock", "name=\"garage\"", stock));
        Path file = write("wren.vehicle", root("vehicle:Vehicle",
                "name=\"wren\" libraries=\"shed.parts#/\" stock=\"shed.stock#/\"", PLACES + content));
        ReadFile<Vehicle> read = new VehicleFiles().openVehicle(file);
        assertEquals(List.of(), read.faults());
        return read.root();
    }

    /** The plan of a vehicle in an arrangement, or in none. */
    public static Plan plan(Vehicle vehicle, Arrangement arrangement) {
        return Assembly.assemble(vehicle, arrangement, null).plan();
    }

    private static String root(String type, String attributes, String content) {
        String namespace = type.substring(0, type.indexOf(':'));
        return """
                <?xml version="1.0" encoding="UTF-8"?>
                <%s xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" xmlns:%s="http://loomwright.org/%s/1" %s format="1.0">
                %s</%s>
                """.formatted(type, namespace, namespace, attributes, content, type);
    }

    private Path write(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
