// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.loomwright.model.files.ReadFault;
import org.loomwright.model.files.ReadFile;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.workbench.editor.DisplayThread;
import org.loomwright.workbench.editor.OtherState;
import org.loomwright.workbench.editor.VehicleDocument;

/**
 * Guards the work on an open vehicle: keeps a copy while it is not saved, offers copies that were left by a workbench that ended
 * without saving, and notices when another program changes the file. What it offers stands in a bar above the drawings.
 */
public final class VehicleGuard {
    private final Composite area;
    private final NoticeBar bar;
    private final Composite content;
    private final VehicleDocument document;
    private final FileWatch watch;
    private final RecoveryFolder folder;
    private final RecoveryKeeper keeper;

    /**
     * Guards a vehicle that was read whole.
     *
     * @param parent   where the bar and the content go
     * @param path     the file
     * @param resource the file in the workspace; null when it is outside
     */
    public VehicleGuard(Composite parent, VehicleDocument document, Path path, IFile resource) {
        this(parent, document, path, resource, RecoveryFolder.ofWorkspace());
    }

    VehicleGuard(Composite parent, VehicleDocument document, Path path, IFile resource, RecoveryFolder folder) {
        this.document = document;
        this.folder = folder;
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(area);
        bar = new NoticeBar(area);
        content = new Composite(area, SWT.NONE);
        content.setLayout(new FillLayout());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(content);
        watch = new FileWatch(path, resource, parent.getDisplay(), this::changedOutside);
        keeper = new RecoveryKeeper(document, new DisplayThread(parent.getDisplay()), folder, watch);
        offer();
    }

    /** Where the drawings go. */
    public Composite content() {
        return content;
    }

    /** The file was saved here. */
    public void saved() {
        watch.know();
        bar.hide();
    }

    /** Ends the guard; work that is given up leaves no copy. */
    public void close() {
        watch.close();
        keeper.close();
    }

    NoticeBar bar() {
        return bar;
    }

    FileWatch watch() {
        return watch;
    }

    RecoveryKeeper keeper() {
        return keeper;
    }

    /** Offers the latest copy that was left, if any. */
    private void offer() {
        folder.of(watch.file()).stream().filter(kept -> !kept.where().equals(keeper.place())).findFirst().ifPresent(this::offer);
    }

    private void offer(RecoveryFolder.Kept kept) {
        RecoveryCopy copy = kept.copy();
        if (FileState.of(copy.content()).equals(watch.known())) {
            // it was saved, and the end came before the copy was gone
            folder.delete(kept.where());
            offer();
            return;
        }
        StringBuilder text = new StringBuilder(found(copy));
        Map<String, Runnable> answers = new LinkedHashMap<>();
        VehicleFiles files = new VehicleFiles();
        ReadFile<Vehicle> disk = files.openVehicle(watch.file());
        OtherState work = state(files, copy.content());
        if (work.vehicle() != null) {
            if (disk.isSound()) {
                text.append(' ').append(Messages.bound(Messages.Recovery_differs,
                        Differences.between(disk.root(), work.vehicle()).words()));
            }
            if (copy.base().exists() && !copy.base().equals(watch.known())) {
                text.append(' ').append(Messages.bound(Messages.Recovery_fileChanged, time(modified())));
            }
            answers.put(Messages.Recovery_restore, () -> restore(kept));
        } else {
            ReadFault first = work.faults().get(0);
            text.append(' ').append(Messages.bound(Messages.Recovery_broken, name(), first.line(), first.getMessage()));
        }
        answers.put(Messages.Recovery_discard, () -> {
            folder.delete(kept.where());
            offer();
        });
        bar.show(text.toString(), answers);
    }

    private OtherState state(VehicleFiles files, byte[] content) {
        try {
            return OtherState.read(files.resourceSet(), watch.file(), content);
        } catch (IOException unreadable) {
            return new OtherState(null, List.of(new ReadFault(name(), 1, 1, null, String.valueOf(unreadable.getMessage()), null)));
        }
    }

    static String found(RecoveryCopy copy) {
        return Messages.bound(Messages.Recovery_found, copy.file().getFileName(), Messages.changes(copy.changes()),
                time(copy.last()), copy.label());
    }

    private void restore(RecoveryFolder.Kept kept) {
        try {
            document.replace(Messages.Recovery_restored, kept.copy().content());
            keeper.supersede(kept.where());
        } catch (IOException | RuntimeException problem) {
            ILog.of(VehicleGuard.class).error("kept work on " + watch.file() + " could not be restored", problem);
            offer(kept);
        }
    }

    private void changedOutside() {
        if (area.isDisposed()) {
            return;
        }
        Map<String, Runnable> answers = new LinkedHashMap<>();
        StringBuilder text = new StringBuilder();
        if (!watch.now().exists()) {
            text.append(Messages.bound(Messages.Disk_deleted, name()));
        } else {
            ReadFile<Vehicle> disk = new VehicleFiles().openVehicle(watch.file());
            if (disk.isSound()) {
                told(disk.root(), text, answers);
            } else {
                ReadFault first = disk.faults().get(0);
                text.append(Messages.bound(Messages.Disk_faults, name(), first.line(), first.getMessage()));
            }
        }
        answers.put(Messages.Disk_keep, this::keepMine);
        bar.show(text.toString(), answers);
    }

    /** What the disk has over what is here, and what is here and nowhere else. */
    private void told(Vehicle disk, StringBuilder text, Map<String, Runnable> answers) {
        String differences = Differences.between(document.vehicle(), disk).words();
        text.append(Messages.bound(Messages.Disk_changed, name(), differences));
        if (document.dirty()) {
            text.append(' ').append(Messages.bound(Messages.Disk_mine, Messages.changes(document.unsavedChanges()),
                    time(document.lastChanged())));
        }
        answers.put(document.dirty() ? Messages.Disk_reloadLosing : Messages.Disk_reload, this::reload);
    }

    private void keepMine() {
        watch.know();
        document.differsFromDisk();
    }

    private void reload() {
        try {
            byte[] bytes = Files.readAllBytes(watch.file());
            watch.know();
            document.replace(Messages.Disk_reloaded, bytes);
            document.equalsDisk();
        } catch (IOException | RuntimeException problem) {
            ILog.of(VehicleGuard.class).error(watch.file() + " could not be read again", problem);
            changedOutside();
        }
    }

    private String name() {
        return String.valueOf(watch.file().getFileName());
    }

    private Instant modified() {
        try {
            return Files.getLastModifiedTime(watch.file()).toInstant();
        } catch (IOException gone) {
            return Instant.now();
        }
    }

    /** The time of day; with its date when that is not today. */
    static String time(Instant at) {
        var local = at.atZone(ZoneId.systemDefault());
        boolean today = local.toLocalDate().equals(LocalDate.now());
        return today ? DateTimeFormatter.ofPattern("HH:mm").format(local)
                : DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT).format(local);
    }
}
