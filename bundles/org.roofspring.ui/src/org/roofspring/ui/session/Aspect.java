package org.roofspring.ui.session;

/** What has changed about a session. */
public enum Aspect {
    /** The session has been opened. */
    OPENED,
    /** The session has been closed; it must not be used any more. */
    CLOSED,
    /** Another session is active now, or none. */
    ACTIVE,
    /** The site was edited, or an edit was undone. */
    MODEL,
    /** Results have landed, or what is shown has become out of date. */
    RESULTS,
    /** Something else is selected. */
    SELECTION,
    /** The site was saved or got another file, or now differs from its file. */
    FILE,
    /** Typed text that could not be taken over has come or gone. */
    DRAFTS,
    /** Values are to be shown in other units. */
    UNITS
}
