package org.roofspring.ui;

/** Identifiers of the parts, commands and the perspective, as the extension registry knows them. */
public final class PartIds {
    public static final String PERSPECTIVE = "org.roofspring.ui.perspective";
    public static final String SITE_EDITOR = "org.roofspring.ui.parts.form";
    public static final String OUTLINE = "org.roofspring.ui.parts.outline";
    public static final String CHART = "org.roofspring.ui.parts.chart";
    public static final String SHORTAGE = "org.roofspring.ui.parts.shortage";
    public static final String TANK_SIZE = "org.roofspring.ui.parts.size";
    public static final String DAYS_AHEAD = "org.roofspring.ui.parts.ahead";
    public static final String FINDINGS = "org.roofspring.ui.parts.findings";
    public static final String WORKINGS = "org.roofspring.ui.parts.workings";
    public static final String CAUTIONS = "org.roofspring.ui.parts.cautions";
    public static final String PROBLEMS = "org.roofspring.ui.parts.problems";

    private PartIds() {
    }
}
