package org.roofspring.ui;

/** Identifiers of the parts, commands and the perspective, as the extension registry knows them. */
public final class PartIds {
    public static final String PERSPECTIVE = "org.roofspring.ui.perspective";
    public static final String SITE_EDITOR = "org.roofspring.ui.parts.form";
    public static final String OUTLINE = "org.roofspring.ui.parts.outline";
    public static final String CHART = "org.roofspring.ui.parts.chart";
    public static final String FINDINGS = "org.roofspring.ui.parts.findings";
    public static final String WORKINGS = "org.roofspring.ui.parts.workings";
    public static final String CAUTIONS = "org.roofspring.ui.parts.cautions";
    public static final String PROBLEMS = "org.roofspring.ui.parts.problems";

    private PartIds() {
    }
}
