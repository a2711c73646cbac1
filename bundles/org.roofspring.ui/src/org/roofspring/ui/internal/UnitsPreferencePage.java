package org.roofspring.ui.internal;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.osgi.service.prefs.BackingStoreException;
import org.roofspring.quantity.UnitSystem;
import org.roofspring.ui.field.DisplayUnits;
import org.roofspring.ui.part.Sessions;

/** In which units values are shown. */
public final class UnitsPreferencePage extends PreferencePage implements IWorkbenchPreferencePage {
    private Composite page;

    @Override
    public void init(IWorkbench workbench) {
        noDefaultAndApplyButton();
    }

    @Override
    protected Control createContents(Composite parent) {
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(5, 8).applyTo(page);
        Label words = new Label(page, SWT.WRAP);
        words.setText("Values are shown in these units. Any unit can be typed, whichever is chosen here, "
                + "and the values that are kept and computed do not change.");
        GridDataFactory.fillDefaults().hint(400, SWT.DEFAULT).applyTo(words);
        choice("As each site says", DisplayUnits.AS_SITE_SAYS);
        choice("Metric (m\u00b3, L, mm)", UnitSystem.METRIC.name());
        choice("US customary (US gallons, feet, inches)", UnitSystem.US_CUSTOMARY.name());
        choice("Imperial gallons, feet and inches", UnitSystem.IMPERIAL.name());
        return page;
    }

    private void choice(String text, String value) {
        Button button = new Button(page, SWT.RADIO);
        button.setText(text);
        button.setData(value);
        button.setSelection(value.equals(DisplayUnits.preferences().get(DisplayUnits.PREFERENCE, DisplayUnits.AS_SITE_SAYS)));
    }

    @Override
    public boolean performOk() {
        for (Control control : page.getChildren()) {
            if (control instanceof Button button && button.getSelection()) {
                DisplayUnits.preferences().put(DisplayUnits.PREFERENCE, (String) button.getData());
            }
        }
        try {
            DisplayUnits.preferences().flush();
        } catch (BackingStoreException e) {
            setErrorMessage("The choice holds for now but cannot be kept: " + e.getMessage());
            return false;
        } finally {
            Sessions.service().unitsChanged();
        }
        return true;
    }
}
