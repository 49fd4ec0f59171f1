// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.core.resources.IFile;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.loomwright.model.files.ReadFault;
import org.loomwright.workbench.fault.FaultTable;

/**
 * A file with faults, opened for repair: the list of them over the file's text, at the place of the fault that is picked. What
 * is in the file stays as it is until the person saves what they typed. When the file changes, by this or by another program, it
 * is read again.
 */
public final class RepairPane extends Composite {
    private final Path file;
    private final Runnable readAgain;
    private final Runnable dirtied;
    private final FileWatch watch;
    private final NoticeBar bar;
    private final StyledText text;
    private boolean dirty;

    /**
     * A pane over a file.
     *
     * @param resource  the file in the workspace; null when it is outside
     * @param faults    what is wrong with it and the files it uses
     * @param readAgain opens the file anew
     * @param dirtied   is told when there is something to save, or nothing any more
     */
    public RepairPane(Composite parent, Path file, IFile resource, List<ReadFault> faults, Runnable readAgain, Runnable dirtied) {
        super(parent, SWT.NONE);
        this.file = file;
        this.readAgain = readAgain;
        this.dirtied = dirtied;
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(this);
        bar = new NoticeBar(this);
        SashForm halves = new SashForm(this, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
        FaultTable table = new FaultTable(halves, faults, Messages.bound(Messages.Repair_head, faults.size()));
        text = new StyledText(halves, SWT.BORDER | SWT.H_SCROLL | SWT.V_SCROLL);
        text.setFont(JFaceResources.getTextFont());
        halves.setWeights(1, 2);
        watch = new FileWatch(file, resource, getDisplay(), this::changedOutside);
        addListener(SWT.Dispose, event -> watch.close());
        fill();
        table.onPick(this::show);
        if (!faults.isEmpty()) {
            show(faults.get(0));
        }
    }

    /** The file's text, to be mended. */
    public StyledText text() {
        return text;
    }

    /** True when something was typed that is not saved. */
    public boolean dirty() {
        return dirty;
    }

    /**
     * Writes what was typed, then reads the file again.
     *
     * @throws IOException when the file cannot be written
     */
    public void save() throws IOException {
        Files.write(file, text.getText().getBytes(StandardCharsets.UTF_8));
        watch.know();
        dirty(false);
        readAgain.run();
    }

    @Override
    public boolean setFocus() {
        return text.setFocus();
    }

    private void fill() {
        try {
            byte[] bytes = Files.readAllBytes(file);
            text.setText(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
            text.addModifyListener(event -> dirty(true));
        } catch (CharacterCodingException other) {
            text.setText(Messages.Repair_notText);
            text.setEditable(false);
        } catch (IOException unreadable) {
            text.setText(String.valueOf(unreadable.getMessage()));
            text.setEditable(false);
        }
    }

    /** Puts the caret where a fault is; faults of other files have their place there. */
    private void show(ReadFault fault) {
        if (!Path.of(fault.file()).getFileName().equals(file.getFileName()) || fault.line() > text.getLineCount()) {
            return;
        }
        int line = fault.line() - 1;
        int start = text.getOffsetAtLine(line);
        int length = text.getLine(line).length();
        int column = StrictMath.min(fault.column() - 1, length);
        text.setSelection(start + length, start + column);
        text.setTopIndex(StrictMath.max(0, line - 3));
    }

    private void changedOutside() {
        if (isDisposed()) {
            return;
        }
        if (!dirty) {
            readAgain.run();
            return;
        }
        Map<String, Runnable> answers = new LinkedHashMap<>();
        answers.put(Messages.Disk_reloaded, readAgain);
        answers.put(Messages.Disk_keep, watch::know);
        bar.show(Messages.bound(Messages.Repair_changedOutside, file.getFileName()), answers);
    }

    private void dirty(boolean now) {
        if (dirty != now) {
            dirty = now;
            dirtied.run();
        }
    }
}
