package org.roofspring.ui.treatment;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DragSource;
import org.eclipse.swt.dnd.DragSourceAdapter;
import org.eclipse.swt.dnd.DragSourceEvent;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.roofspring.site.StepKind;
import org.roofspring.ui.look.Icons;
import org.roofspring.ui.look.Palette;

/** The kinds of step there are. Double-click, Enter or dragging to the board adds one. */
public final class StepPalette {
    /** In the order in which water usually meets them. */
    private static final List<StepKind> KINDS = List.of(StepKind.MESH_SCREEN, StepKind.SETTLING, StepKind.RAPID_SAND,
            StepKind.SLOW_SAND, StepKind.SEDIMENT_CARTRIDGE, StepKind.CERAMIC, StepKind.CERAMIC_SILVER,
            StepKind.GRANULAR_CARBON, StepKind.CARBON_BLOCK, StepKind.CALCITE_CONTACT, StepKind.MICROFILTRATION,
            StepKind.ULTRAFILTRATION, StepKind.REVERSE_OSMOSIS, StepKind.UV_LAMP, StepKind.CHLORINATION,
            StepKind.BOILING, StepKind.SOLAR, StepKind.SAFE_STORAGE, StepKind.OTHER);

    private final Composite frame;
    private final Table table;

    /** @param add is given the kind of step to add */
    StepPalette(Composite parent, Consumer<StepKind> add) {
        frame = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(frame);
        Label label = new Label(frame, SWT.NONE);
        label.setText("Add a step");
        label.setForeground(Palette.of(label).label());
        GridDataFactory.fillDefaults().indent(6, 4).applyTo(label);
        table = new Table(frame, SWT.SINGLE | SWT.V_SCROLL | SWT.FULL_SELECTION);
        table.setToolTipText("Double-click or Enter adds a step behind the selected one; or drag it to its place.");
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table);
        for (StepKind kind : KINDS) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(TrainEdits.name(kind));
            item.setImage(Icons.image("add"));
            item.setData(kind);
        }
        table.addListener(SWT.DefaultSelection, event -> add.accept((StepKind) event.item.getData()));
        DragSource source = new DragSource(table, DND.DROP_COPY);
        source.setTransfer(new Transfer[] {TextTransfer.getInstance()});
        source.addDragListener(new DragSourceAdapter() {
            @Override
            public void dragStart(DragSourceEvent event) {
                event.doit = table.getSelectionCount() == 1;
            }

            @Override
            public void dragSetData(DragSourceEvent event) {
                event.data = ((StepKind) table.getSelection()[0].getData()).getLiteral();
            }
        });
    }

    Control control() {
        return frame;
    }

    /** The list, for tests. */
    public Table table() {
        return table;
    }
}
