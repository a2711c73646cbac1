package org.roofspring.site.edit;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;

/** An edit of a site that can be undone. Its label says what it does, such as "Set plan area of North roof". */
public interface SiteCommand extends Command {

    /** The object that was edited, added or removed: where to look after undo. */
    EObject subject();
}
