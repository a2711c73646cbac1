package org.roofspring.ui.tests;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

import org.eclipse.swt.widgets.Display;

/** Lets the display work while a test waits. */
public final class Spin {
    private static final long PATIENCE_S = 120;

    private Spin() {
    }

    /** Works through events until a condition holds; fails when it does not within two minutes. */
    public static void until(String what, BooleanSupplier condition) {
        Display display = Display.getCurrent();
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > end) {
                fail("waited " + PATIENCE_S + " s in vain until " + what);
            }
            if (!display.readAndDispatch()) {
                pause();
            }
        }
        settle();
    }

    /** Works through the events that are there now, and through those they cause, for at most two seconds. */
    public static void settle() {
        Display display = Display.getCurrent();
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(2);
        while (System.nanoTime() < end && display.readAndDispatch()) {
            // every event is worked through
        }
    }

    /** Works through events for a while. */
    public static void during(long millis) {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
        while (System.nanoTime() < end) {
            if (!Display.getCurrent().readAndDispatch()) {
                pause();
            }
        }
    }

    private static void pause() {
        try {
            Thread.sleep(5);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        }
    }
}
