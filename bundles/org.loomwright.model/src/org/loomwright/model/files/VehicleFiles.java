// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.parts.PartsPackage;
import org.loomwright.model.parts.Stock;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.practice.PracticePackage;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehiclePackage;

/**
 * Opens and saves files. One instance reads each file once, so that vehicles opened with it share their libraries and
 * practices. One thread at a time.
 */
public final class VehicleFiles {
    private static final String COMMON_PRACTICE = "common.practice";

    private final ResourceSet resources = new ResourceSetImpl();
    private final AllowedFolders allowed;
    private final Migration migration;

    /** Files that may refer into the folders around each file that is opened, see {@link AllowedFolders}. */
    public VehicleFiles() {
        this(AllowedFolders.aroundOpenedFiles());
    }

    /** Files that may refer into these folders. */
    public VehicleFiles(AllowedFolders allowed) {
        this(allowed, Migration.standard());
    }

    VehicleFiles(AllowedFolders allowed, Migration migration) {
        this.allowed = allowed;
        this.migration = migration;
        prepare(resources, migration);
        resources.setURIConverter(new FilesOnlyConverter(allowed));
    }

    /** Makes a resource set of another program part read our files; its own converter decides what may be read. */
    public static void prepare(ResourceSet set) {
        prepare(set, Migration.standard());
    }

    private static void prepare(ResourceSet set, Migration migration) {
        VehicleResourceFactory factory = new VehicleResourceFactory(migration);
        set.getResourceFactoryRegistry().getExtensionToFactoryMap().put(Resource.Factory.Registry.DEFAULT_EXTENSION, factory);
        for (FileKind kind : FileKind.values()) {
            set.getResourceFactoryRegistry().getExtensionToFactoryMap().put(kind.extension(), factory);
        }
        set.getPackageRegistry().put(PartsPackage.eNS_URI, PartsPackage.eINSTANCE);
        set.getPackageRegistry().put(PracticePackage.eNS_URI, PracticePackage.eINSTANCE);
        set.getPackageRegistry().put(VehiclePackage.eNS_URI, VehiclePackage.eINSTANCE);
    }

    /** The resources opened so far. */
    public ResourceSet resourceSet() {
        return resources;
    }

    /** Opens a vehicle file. Never throws for what is on the disk: see the faults. */
    public ReadFile<Vehicle> openVehicle(Path file) {
        return open(file, FileKind.VEHICLE, Vehicle.class);
    }

    /** Opens a parts library. */
    public ReadFile<PartsLibrary> openParts(Path file) {
        return open(file, FileKind.PARTS, PartsLibrary.class);
    }

    /** Opens a stock file. */
    public ReadFile<Stock> openStock(Path file) {
        return open(file, FileKind.STOCK, Stock.class);
    }

    /** Opens a practice. */
    public ReadFile<Practice> openPractice(Path file) {
        return open(file, FileKind.PRACTICE, Practice.class);
    }

    /** Opens a file of any kind; {@link FileKind#of} tells which it is. */
    public ReadFile<EObject> open(Path file) {
        return open(file, null, EObject.class);
    }

    private <T extends EObject> ReadFile<T> open(Path file, FileKind wanted, Class<T> type) {
        ShownPaths shown = new ShownPaths(file);
        allowed.opened(file);
        URI uri = FilePaths.uri(file);
        Resource known = resources.getResource(uri, false);
        VehicleResource resource = (VehicleResource) (known == null ? resources.createResource(uri) : known);
        try {
            resource.load(resources.getLoadOptions());
        } catch (IOException e) {
            resources.getResources().remove(resource);
            RefusedFileException refused = RefusedFileException.because(e);
            return new ReadFile<>(null, null, List.of(new ReadFault(shown.of(uri), 1, 1, null,
                    "the file " + refused.getMessage(), refused.expected())));
        }
        List<ReadFault> faults = new ArrayList<>();
        EObject root = resource.root();
        if (root != null && !type.isInstance(root)) {
            Location at = resource.location(root);
            faults.add(new ReadFault(shown.of(uri), at.line(), at.column(), ElementPath.of(root),
                    "this is a " + FileKind.of(root).map(FileKind::word).orElse("file of another kind"), "a " + wanted.word()));
        }
        for (VehicleResource used : reached(resource)) {
            used.faults().forEach(fault -> faults.add(fault.in(shown.of(used.getURI()))));
        }
        return new ReadFile<>(type.isInstance(root) ? type.cast(root) : null, resource, faults);
    }

    /** The file and all that it uses, each once, nearest first. */
    private static Set<VehicleResource> reached(VehicleResource start) {
        Set<VehicleResource> reached = new LinkedHashSet<>(List.of(start));
        List<VehicleResource> open = new ArrayList<>(reached);
        for (int i = 0; i < open.size(); i++) {
            for (Resource used : open.get(i).filesTried()) {
                if (used instanceof VehicleResource resource && reached.add(resource)) {
                    open.add(resource);
                }
            }
        }
        return reached;
    }

    /** Adds a new file with a root of its own; nothing is written before it is saved. */
    public VehicleResource create(Path file, EObject root) {
        allowed.opened(file);
        VehicleResource resource = (VehicleResource) resources.createResource(FilePaths.uri(file));
        resource.getContents().add(root);
        return resource;
    }

    /**
     * Saves a file whole: under a temporary name, then moved.
     *
     * @return false when nothing had changed, so that the file was left alone
     * @throws RefusedFileException when the file had faults when it was read; its message fits after the file's name
     */
    public static boolean save(VehicleResource resource) throws IOException {
        return resource.saveIfChanged(resource.getURI());
    }

    /** Saves a file under another name, which it keeps; references to other files are rewritten to start there. */
    public void saveAs(VehicleResource resource, Path file) throws IOException {
        URI before = resource.getURI();
        allowed.opened(file);
        resource.toBytes();
        resource.setURI(FilePaths.uri(file));
        try {
            resource.saveIfChanged(resource.getURI());
        } catch (IOException e) {
            resource.setURI(before);
            throw e;
        }
    }

    /**
     * All vehicle files below a folder, sorted by path. Symbolic links to folders are not followed.
     *
     * @throws IOException when the folder cannot be listed
     */
    public static List<Path> find(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder, new FileVisitOption[0])) {
            return files.filter(file -> file.getFileName() != null
                    && file.getFileName().toString().endsWith("." + FileKind.VEHICLE.extension())
                    && Files.isRegularFile(file)).sorted().toList();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /** The practice that holds wherever a workshop's own practice is silent: the end of every chain of practices. */
    public Practice commonPractice() {
        URI uri = URI.createURI("loomwright:/" + COMMON_PRACTICE);
        Resource known = resources.getResource(uri, false);
        VehicleResource resource = (VehicleResource) (known == null ? resources.createResource(uri) : known);
        if (!resource.isLoaded()) {
            try (InputStream in = VehicleFiles.class.getResourceAsStream(COMMON_PRACTICE)) {
                resource.load(in, null);
            } catch (IOException e) {
                throw new IllegalStateException("the common practice is damaged", e);
            }
        }
        if (!resource.faults().isEmpty()) {
            throw new IllegalStateException("the common practice is damaged: " + resource.faults().get(0));
        }
        return (Practice) resource.root();
    }
}
