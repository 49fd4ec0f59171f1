// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EventObject;
import java.util.List;
import java.util.Objects;
import org.eclipse.emf.common.command.CommandStackListener;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Catalogue;
import org.loomwright.engine.result.Finding;
import org.loomwright.model.edit.providers.LoomwrightAdapterFactory;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.files.ReadFile;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.workbench.live.Analysis;
import org.loomwright.workbench.live.LiveLoop;
import org.loomwright.workbench.live.OwnerThread;
import org.loomwright.workbench.live.Snapshot;
import org.loomwright.workbench.live.StructuralFindings;

/**
 * One open vehicle: its file, its commands, which arrangement and case are looked at, what is selected, and the latest
 * analysis. Belongs to one thread. A file with faults has no vehicle, or is not to be changed: see {@link #sound()}.
 */
public final class VehicleDocument {
    /** What changed. */
    public enum Change {
        /** The model. */
        MODEL,
        /** Whether there is something to save. */
        DIRTY,
        /** Arrangement or case looked at. */
        SHOWN,
        /** The analysis. */
        ANALYSIS
    }

    /** Is told of changes. */
    @FunctionalInterface
    public interface Listener {
        /** Something changed. */
        void changed(Change change);
    }

    private final LoomwrightAdapterFactory factory = new LoomwrightAdapterFactory();
    private final EditHistory stack = new EditHistory();
    private final CommandStackListener stackListener = this::stackChanged;
    private final ElementSelection selection = new ElementSelection();
    private final List<Listener> listeners = new ArrayList<>();
    private final AdapterFactoryEditingDomain domain;
    private final Path path;
    private final ReadFile<Vehicle> file;
    private final LiveLoop loop;
    private Catalogue catalogue = Catalogue.EMPTY;
    private String arrangement;
    private String caseName;
    private Analysis analysis;
    private boolean dirty;

    private VehicleDocument(VehicleFiles files, Path path, OwnerThread owner) {
        this.path = path;
        file = files.openVehicle(path);
        domain = new AdapterFactoryEditingDomain(factory, stack, files.resourceSet());
        loop = new LiveLoop(owner, this::snapshot, this::analysed);
        stack.addCommandStackListener(stackListener);
        if (vehicle() != null) {
            Arrangement first = vehicle().getAdopted() != null ? vehicle().getAdopted()
                    : vehicle().getArrangements().isEmpty() ? null : vehicle().getArrangements().get(0);
            arrangement = first == null ? null : first.getName();
        }
    }

    /** Opens a file; never fails for what is on the disk. The first analysis begins at once where the file is sound. */
    public static VehicleDocument open(Path path, OwnerThread owner) {
        VehicleDocument document = new VehicleDocument(new VehicleFiles(), path, owner);
        if (document.sound()) {
            document.loop.changed();
        }
        return document;
    }

    /** True when the file was read whole, so that it can be shown and saved. */
    public boolean sound() {
        return file.isSound();
    }

    /** What was read, with its faults. */
    public ReadFile<Vehicle> file() {
        return file;
    }

    /** The vehicle; null when it could not be read. */
    public Vehicle vehicle() {
        return file.root();
    }

    /** Editing domain with the command stack and the item providers. */
    public AdapterFactoryEditingDomain domain() {
        return domain;
    }

    /** Selected elements. */
    public ElementSelection selection() {
        return selection;
    }

    /** The latest analysis; null before the first. It may be older than the model: see {@link #fresh()}. */
    public Analysis analysis() {
        return analysis;
    }

    /** True when the analysis belongs to the model as it is now. */
    public boolean fresh() {
        return analysis != null && analysis.revision() == loop.revision();
    }

    /** Findings of the latest analysis. */
    public List<Finding> findings() {
        return analysis == null ? List.of() : analysis.findings();
    }

    /** The arrangement looked at; null when the vehicle has none. */
    public Arrangement arrangement() {
        return vehicle().getArrangements().stream().filter(each -> Objects.equals(each.getName(), arrangement)).findFirst()
                .orElse(vehicle().getArrangements().isEmpty() ? null : vehicle().getArrangements().get(0));
    }

    /** The case looked at; null for all. */
    public String caseName() {
        return caseName;
    }

    /** Looks at another arrangement. */
    public void showArrangement(String name) {
        if (!Objects.equals(name, arrangement)) {
            arrangement = name;
            analysis = null;
            tell(Change.SHOWN);
            loop.changed();
        }
    }

    /** Looks at another case; null for all. */
    public void showCase(String name) {
        if (!Objects.equals(name, caseName)) {
            caseName = name;
            tell(Change.SHOWN);
        }
    }

    /** The element of an id; null when it is gone. */
    public EObject element(String id) {
        return vehicle() == null || id == null ? null : Fragments.find(vehicle(), id);
    }

    /** Selects an element, wherever it is shown. */
    public void reveal(String id) {
        selection.set(List.of(id));
    }

    /**
     * Changes the model in one step that can be undone.
     *
     * @throws RuntimeException what the edit throws; the model is as it was then
     */
    public void run(String label, Runnable edit) {
        RecordedEdit command = new RecordedEdit(label, vehicle(), edit);
        stack.execute(command);
        if (command.failure() != null) {
            throw command.failure();
        }
    }

    /** True when there is something to save. */
    public boolean dirty() {
        return dirty;
    }

    /**
     * Saves the file whole.
     *
     * @throws IOException when it cannot be written, or had faults when it was read; what is on the disk stays as it is
     */
    public void save() throws IOException {
        VehicleFiles.save(file.resource());
        stack.saveIsDone();
        updateDirty();
    }

    /** Changes since the vehicle was saved; 0 when there is nothing to save. */
    public int unsavedChanges() {
        return dirty ? stack.unsaved() : 0;
    }

    /** What the latest change is called; empty before the first. */
    public String lastChange() {
        return stack.lastLabel();
    }

    /** When the latest change was made. */
    public Instant lastChanged() {
        return stack.last();
    }

    /**
     * The file's content as it would be saved now.
     *
     * @throws IOException when it refers to something that cannot be written
     */
    public byte[] content() throws IOException {
        return file.resource().toBytes();
    }

    /**
     * Makes the whole vehicle what a file with this content holds, in one step that can be undone.
     *
     * @throws IOException when the content has faults; the vehicle stays as it is
     */
    public void replace(String label, byte[] content) throws IOException {
        OtherState other = OtherState.read(domain.getResourceSet(), path, content);
        if (other.vehicle() == null) {
            throw new IOException(other.faults().get(0).toString());
        }
        selection.set(List.of());
        run(label, () -> other.fill(vehicle()));
    }

    /** What is on the disk is what is here now, though it was not saved from here. */
    public void equalsDisk() {
        stack.saveIsDone();
        updateDirty();
    }

    /** What is on the disk is something else: there is something to save, whatever is undone. */
    public void differsFromDisk() {
        stack.neverSaved();
        updateDirty();
    }

    /** Adds a listener. */
    public void listen(Listener listener) {
        listeners.add(listener);
    }

    /** Removes a listener. */
    public void unlisten(Listener listener) {
        listeners.remove(listener);
    }

    /** Ends analysis and item providers. */
    public void dispose() {
        loop.stop();
        stack.removeCommandStackListener(stackListener);
        listeners.clear();
        factory.dispose();
    }

    /** The vehicle as it stands now, in the arrangement looked at, for studies. */
    public AssemblyResult assembled() {
        AssemblyResult assembled = Assembly.assemble(vehicle(), arrangement(), null, catalogue);
        catalogue = assembled.catalogue();
        return assembled;
    }

    private Snapshot snapshot() {
        return new Snapshot(assembled(), StructuralFindings.of(vehicle()));
    }

    private void analysed(Analysis made) {
        analysis = made;
        tell(Change.ANALYSIS);
    }

    private void stackChanged(EventObject event) {
        loop.changed();
        tell(Change.MODEL);
        updateDirty();
    }

    private void updateDirty() {
        if (dirty != stack.isSaveNeeded()) {
            dirty = !dirty;
            tell(Change.DIRTY);
        }
    }

    private void tell(Change change) {
        List.copyOf(listeners).forEach(listener -> listener.changed(change));
    }
}
