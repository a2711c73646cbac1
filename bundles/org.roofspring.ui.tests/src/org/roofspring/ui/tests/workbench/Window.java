package org.roofspring.ui.tests.workbench;

import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.roofspring.ui.PartIds;
import org.roofspring.ui.field.Field;
import org.roofspring.ui.part.Sessions;
import org.roofspring.ui.part.Sites;
import org.roofspring.ui.parts.chart.TankVolumeView;
import org.roofspring.ui.parts.findings.FindingLine;
import org.roofspring.ui.parts.findings.FindingsView;
import org.roofspring.ui.parts.form.SiteEditor;
import org.roofspring.ui.session.FindingKey;
import org.roofspring.ui.session.SiteSession;
import org.roofspring.ui.tests.Spin;

/** The real window, driven as a person would: through its fields, commands and parts. */
final class Window {
    private Window() {
    }

    static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
    }

    /** Copies the demo data, so that what is saved harms nothing. */
    static Path demoSite(Path folder, String name) {
        Path demo = Path.of(System.getProperty("roofspring.demo-data"));
        try (Stream<Path> files = Files.walk(demo)) {
            for (Path file : files.toList()) {
                Path copy = folder.resolve(demo.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(file, copy);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return folder.resolve(name);
    }

    /** Opens a site and waits for its answer. */
    static SiteEditor open(Path file) {
        Sites.open(page(), file);
        SiteEditor editor = (SiteEditor) page().getActiveEditor();
        assertNotNull(editor);
        answered(editor.session());
        return editor;
    }

    static void answered(SiteSession session) {
        Spin.until("the storage balance is up to date",
                () -> session.live().results().completed("storage.balance").isPresent() && !session.live().anyOutOfDate());
    }

    static void closeAll() {
        page().closeAllEditors(false);
        Spin.settle();
    }

    static void command(String id) {
        try {
            PlatformUI.getWorkbench().getActiveWorkbenchWindow().getService(IHandlerService.class).executeCommand(id, null);
        } catch (Exception e) {
            throw new AssertionError("the command " + id + " cannot be run", e);
        }
        Spin.settle();
    }

    @SuppressWarnings("unchecked")
    static <V> V view(String id) {
        try {
            return (V) page().showView(id);
        } catch (PartInitException e) {
            throw new AssertionError("the part " + id + " is missing", e);
        }
    }

    static TankVolumeView chart() {
        return view(PartIds.CHART);
    }

    /** A finding as the findings part shows it. */
    static FindingLine finding(String calculation, String id) {
        FindingsView findings = view(PartIds.FINDINGS);
        Spin.settle();
        return findings.lines().stream().flatMap(line -> line.children().stream())
                .filter(line -> new FindingKey(calculation, id, null).equals(line.finding())).findFirst().orElseThrow();
    }

    /** The text field of a feature in the form. */
    static Text field(SiteEditor editor, String feature) {
        return controls(editor.form().control(), Text.class).stream().filter(text -> feature.equals(text.getData(Field.FEATURE_KEY)))
                .findFirst().orElseThrow(() -> new AssertionError("no field " + feature));
    }

    /** Types into a field and presses Enter. */
    static void type(Text field, String text) {
        field.setFocus();
        field.setText(text);
        field.notifyListeners(SWT.DefaultSelection, new Event());
        Spin.settle();
    }

    static <C extends Control> List<C> controls(Composite parent, Class<C> type) {
        List<C> found = new ArrayList<>();
        for (Control child : parent.getChildren()) {
            if (type.isInstance(child)) {
                found.add(type.cast(child));
            }
            if (child instanceof Composite inner) {
                found.addAll(controls(inner, type));
            }
        }
        return found;
    }

    static int shells() {
        return PlatformUI.getWorkbench().getDisplay().getShells().length;
    }

    static SiteSession active() {
        return Sessions.service().active().orElseThrow();
    }
}
