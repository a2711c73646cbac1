package org.roofspring.ui.internal;

import java.util.concurrent.Executor;

import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/** Runs tasks later on the display's thread; once the display has gone there is nobody left to run them for. */
public final class DisplayThread implements Executor {
    @Override
    public void execute(Runnable task) {
        if (!PlatformUI.isWorkbenchRunning()) {
            return;
        }
        Display display = PlatformUI.getWorkbench().getDisplay();
        try {
            if (!display.isDisposed()) {
                display.asyncExec(task);
            }
        } catch (SWTException e) {
            if (e.code != SWT.ERROR_DEVICE_DISPOSED) {
                throw e;
            }
        }
    }
}
