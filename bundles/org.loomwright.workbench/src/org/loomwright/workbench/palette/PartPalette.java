// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.palette;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.symbol.SymbolKind;
import org.loomwright.diagram.symbol.Symbols;
import org.loomwright.diagram.tool.PlaceTool;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.workbench.diagram.MarkImage;
import org.loomwright.workbench.diagram.SceneCanvas;
import org.loomwright.workbench.editor.Words;

/**
 * Parts of the vehicle's libraries beside a drawing, by what they are for. A part is dragged onto the drawing, or clicked and
 * then put where the drawing is clicked; with the keyboard it is sought, walked to, and taken with Enter.
 */
public final class PartPalette extends Composite {
    private static final int ICON_PX = 24;
    private static final double SCALE = 0.62;
    private static final int TREE_PX = 150;
    private final SceneCanvas canvas;
    private final Text search;
    private final Tree tree;
    private final Map<SymbolKind, Image> icons = new EnumMap<>(SymbolKind.class);
    private Map<PartOffer.Group, List<PartOffer>> offers = Map.of();
    private Theme theme = Theme.light();

    /** A palette of parts to be placed on a canvas. */
    public PartPalette(Composite parent, SceneCanvas canvas) {
        super(parent, SWT.NONE);
        this.canvas = canvas;
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 4;
        layout.marginHeight = 4;
        setLayout(layout);
        search = new Text(this, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        search.setMessage(Words.of("palette.find"));
        search.setToolTipText(Words.of("palette.find.tip"));
        search.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        tree = new Tree(this, SWT.SINGLE | SWT.BORDER);
        GridData room = new GridData(SWT.FILL, SWT.FILL, true, true);
        room.widthHint = TREE_PX;
        tree.setLayoutData(room);
        tree.setToolTipText(Words.of("palette.tip"));
        search.addListener(SWT.Modify, event -> fill());
        search.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.ARROW_DOWN) {
                walkIn();
            }
        });
        search.addListener(SWT.DefaultSelection, event -> walkIn());
        tree.addListener(SWT.DefaultSelection, event -> entered((TreeItem) event.item));
        tree.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_ESCAPE) {
                event.doit = false;
                canvas.setFocus();
            }
        });
        new PartDrag(tree, canvas);
        addListener(SWT.Dispose, event -> dropIcons());
    }

    /** Offers the parts of a vehicle's libraries. */
    public void offer(Vehicle vehicle) {
        Map<PartOffer.Group, List<PartOffer>> next = PartOffer.of(vehicle);
        if (!next.equals(offers)) {
            offers = next;
            fill();
        }
    }

    /** Takes other colours. */
    public void theme(Theme colours) {
        if (!theme.name().equals(colours.name())) {
            theme = colours;
            dropIcons();
            fill();
        }
    }

    /** Goes to the field in which parts are sought. */
    public void seek() {
        search.setFocus();
        search.selectAll();
    }

    private void walkIn() {
        if (tree.getItemCount() > 0) {
            TreeItem first = tree.getItem(0);
            tree.setSelection(first.getExpanded() && first.getItemCount() > 0 ? first.getItem(0) : first);
            tree.setFocus();
        }
    }

    private void entered(TreeItem item) {
        if (item.getData() instanceof PartOffer offer) {
            canvas.tool(PlaceTool.of(offer.part()));
            canvas.setFocus();
        } else {
            item.setExpanded(!item.getExpanded());
        }
    }

    private void fill() {
        String sought = search.getText();
        boolean all = sought.isBlank();
        tree.setRedraw(false);
        tree.removeAll();
        offers.forEach((group, parts) -> {
            List<PartOffer> fitting = all ? parts : parts.stream().filter(part -> part.fits(sought)).toList();
            if (!fitting.isEmpty()) {
                TreeItem head = new TreeItem(tree, SWT.NONE);
                head.setText(Words.of("palette." + group.name()));
                for (PartOffer offer : fitting) {
                    TreeItem item = new TreeItem(head, SWT.NONE);
                    item.setText(offer.label());
                    item.setImage(icons.computeIfAbsent(offer.symbol(), this::icon));
                    item.setData(offer);
                }
                head.setExpanded(!all);
            }
        });
        tree.setRedraw(true);
    }

    private Image icon(SymbolKind kind) {
        return MarkImage.of(getDisplay(), theme, Symbols.of(kind, Role.INK).at(ICON_PX / 2.0, ICON_PX / 2.0, SCALE), ICON_PX);
    }

    private void dropIcons() {
        icons.values().forEach(Image::dispose);
        icons.clear();
    }
}
