package org.roofspring.treatment.safety;

/** Ways in which people or sewage bring viruses into roof water. */
public enum VirusPathway {
    OPEN_TANK("an open tank"),
    SHARED_VESSEL("vessels dipped by many hands"),
    TANKER_TOP_UP("tanker top-up"),
    SEWAGE_NEARBY("a buried tank near a latrine, septic tank or sewer"),
    PEOPLE_ON_ROOF("people living or working on the roof"),
    OTHER_SOURCE_MIXED("surface or well water mixed in");

    private final String label;

    VirusPathway(String label) {
        this.label = label;
    }

    /** In running text. */
    public String label() {
        return label;
    }
}
