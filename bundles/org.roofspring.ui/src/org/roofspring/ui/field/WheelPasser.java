package org.roofspring.ui.field;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Makes the mouse wheel scroll the form rather than change the value that happens to lie under the pointer. */
final class WheelPasser {
    private static final int STEP = 20;

    private WheelPasser() {
    }

    static void install(Control control) {
        control.addListener(SWT.MouseVerticalWheel, event -> {
            event.doit = false;
            for (Composite up = control.getParent(); up != null; up = up.getParent()) {
                if (up instanceof ScrolledComposite form) {
                    form.setOrigin(form.getOrigin().x, form.getOrigin().y - event.count * STEP);
                    return;
                }
            }
        });
    }
}
