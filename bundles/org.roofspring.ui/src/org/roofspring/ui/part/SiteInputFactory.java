package org.roofspring.ui.part;

import java.nio.file.Path;

import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IElementFactory;
import org.eclipse.ui.IMemento;
import org.roofspring.site.io.SiteFileException;

/** Opens the site files again that were open when the workbench was closed. A file that has gone is left closed. */
public final class SiteInputFactory implements IElementFactory {
    static final String ID = "org.roofspring.ui.siteInput";

    @Override
    public IAdaptable createElement(IMemento memento) {
        String file = memento.getString(SiteEditorInput.FILE);
        try {
            return file == null ? null : new SiteEditorInput(Sessions.service().open(Path.of(file)));
        } catch (SiteFileException e) {
            ILog.of(SiteInputFactory.class).warn(e.getMessage(), e);
            return null;
        }
    }
}
