// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;

/**
 * One file: a vehicle, a parts library, a stock or a practice. Elements are identified by scoped names (see
 * {@link Fragments}), references are written as names. Reading never throws for what is in a file: what is wrong is listed in
 * {@link #faults()} and in {@link #getErrors()}, and a file with faults is not saved. One thread at a time.
 */
public final class VehicleResource extends XMIResourceImpl {
    private final Migration migration;
    private final ScopeIndex scopes = new ScopeIndex();
    private final WrittenNames writtenNames = new WrittenNames();
    private Map<EObject, Location> locations = new IdentityHashMap<>();
    private List<ReadFault> faults = List.of();
    private final Set<Resource> filesTried = new LinkedHashSet<>();
    private List<String> missingFiles = List.of();
    private FileKind kind;
    private FileForm form;

    VehicleResource(URI uri, Migration migration) {
        super(uri);
        this.migration = migration;
        setEncoding(StandardCharsets.UTF_8.name());
    }

    /** What was wrong with the file when it was read, by position; at most a hundred and the number of the others. */
    public List<ReadFault> faults() {
        return faults;
    }

    /** True when the file has XML comments between its elements, which are lost when it is saved: ask before the first time. */
    public boolean hasComments() {
        return form != null && form.comments();
    }

    /** The kind of file; null before it is known. */
    public FileKind kind() {
        return getContents().isEmpty() ? kind : FileKind.of(getContents().get(0)).orElse(kind);
    }

    /** The root; null when there is none, or when it could not be read. */
    public EObject root() {
        return getContents().isEmpty() ? null : getContents().get(0);
    }

    /** Other files this one referred to when it was read, in order, also those that could not be read. */
    Set<Resource> filesTried() {
        return filesTried;
    }

    Location location(EObject object) {
        return locations.getOrDefault(object, Location.UNKNOWN);
    }

    ScopeIndex scopes() {
        return scopes;
    }

    WrittenNames writtenNames() {
        return writtenNames;
    }

    /** How the file was written; null for a new one. */
    FileForm form() {
        return form;
    }

    @Override
    public String getURIFragment(EObject object) {
        return object.eResource() == this ? Fragments.of(object) : super.getURIFragment(object);
    }

    @Override
    public EObject getEObject(String fragment) {
        return getContents().isEmpty() ? null : Fragments.find(getContents().get(0), fragment);
    }

    @Override
    protected EObject getEObjectByID(String id) {
        return getEObject(id);
    }

    @Override
    public void doLoad(InputStream in, Map<?, ?> options) throws IOException {
        FileReader reader = new FileReader(this, migration);
        kind = reader.peek(in.readAllBytes());
        reader.read(writtenNames);
        locations = reader.locations();
        form = reader.form();
        faults = reader.faults();
        missingFiles = reader.missingFiles();
        getErrors().addAll(faults);
    }

    @Override
    public void doLoad(InputSource source, Map<?, ?> options) throws IOException {
        if (source.getByteStream() == null) {
            throw new IOException("only streams of bytes are read");
        }
        doLoad(source.getByteStream(), options);
    }

    @Override
    public void doLoad(Node node, Map<?, ?> options) {
        throw new UnsupportedOperationException("reading a tree of XML");
    }

    @Override
    protected void doUnload() {
        super.doUnload();
        scopes.clear();
        writtenNames.clear();
        filesTried.clear();
        locations = new IdentityHashMap<>();
        faults = List.of();
        missingFiles = List.of();
        form = null;
    }

    /**
     * Saves the file whole: under a temporary name first, then moved. A file whose content would not change is not written.
     *
     * @throws RefusedFileException when the file had faults when it was read
     */
    @Override
    public void save(Map<?, ?> options) throws IOException {
        saveIfChanged(getURI());
    }

    /** Saves the file under a URI; true when something was written. */
    boolean saveIfChanged(URI target) throws IOException {
        byte[] bytes = toBytes();
        Path path = FilePaths.path(getURIConverter().normalize(target));
        boolean written = true;
        if (path != null) {
            written = WholeFile.write(path, bytes);
        } else {
            try (OutputStream out = getURIConverter().createOutputStream(target, Map.of())) {
                out.write(bytes);
            }
        }
        setModified(false);
        return written;
    }

    /**
     * The file's content as it would be saved now.
     *
     * @throws RefusedFileException when the file had faults when it was read, or refers to something that cannot be written
     */
    public byte[] toBytes() throws IOException {
        if (!faults.isEmpty()) {
            throw new RefusedFileException("is not saved, as that would lose what could not be read: " + faults.get(0), null);
        }
        if (!missingFiles.isEmpty()) {
            throw new RefusedFileException("is not saved, as " + String.join(", ", missingFiles) + " could not be read", null);
        }
        return new ModelWriter(this).bytes();
    }

    @Override
    public void doSave(OutputStream out, Map<?, ?> options) throws IOException {
        out.write(toBytes());
    }

    @Override
    public void doSave(Writer writer, Map<?, ?> options) throws IOException {
        writer.write(new String(toBytes(), StandardCharsets.UTF_8));
    }
}
