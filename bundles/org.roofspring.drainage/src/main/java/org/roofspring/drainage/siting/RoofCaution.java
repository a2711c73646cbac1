package org.roofspring.drainage.siting;

import org.roofspring.drainage.Source;

/** What to say with any roof, gutter and tank, with who must be asked. */
public enum RoofCaution {
    LEAD_PAINT("roof.lead-paint", Severity.DANGER,
            "Paint on an old roof, gutter, downpipe or tank may hold lead. Have it tested, and do not drink"
                    + " from the roof until leaded paint is removed.",
            "Ask the health authority, and a licensed contractor for the removal.",
            Source.read("Somerset Regional Council, Queensland, guidance on lead paint and rainwater")),
    LEAD_FLASHING("roof.lead-flashing", Severity.DANGER,
            "Flashings of lead, and other metals of roof and gutter, go into soft rainwater. Replace lead,"
                    + " and have the water tested for it.",
            "Ask the health authority.",
            Source.read("New Zealand Ministry of Health, Water Safety Plan Guide: Roof Water Sources, 2014")),
    ASBESTOS_CEMENT("roof.asbestos-cement", Severity.DANGER,
            "Asbestos-cement sheet is dangerous to breathe, not known to be so to drink. Do not cut, drill,"
                    + " brush, walk on or pressure-wash it; do not collect from sheet that crumbles.",
            "Ask a licensed asbestos contractor before any work on it.",
            Source.fromMemory("enHealth, Guidance on use of rainwater tanks, and WHO, Guidelines for"
                    + " drinking-water quality, on asbestos")),
    BIRDS_AND_ANIMALS("roof.birds-and-animals", Severity.DANGER,
            "Droppings of birds, rats, possums and cats carry disease into the tank. Keep roosts, branches"
                    + " and wires off the roof, close every opening, and treat water for drinking.",
            "Ask the health authority how to treat it.",
            Source.read("New Zealand Ministry of Health, Water Safety Plan Guide: Roof Water Sources, 2014")),
    MOSQUITO_MESH("tank.mosquito-mesh", Severity.DANGER,
            "Mosquitoes breed in any tank they can enter. Screen every inlet, overflow and vent with mesh of"
                    + " 1 mm or finer that does not rust, and look for tears each month.",
            "Ask the health authority; in many places screens are the law.",
            Source.fromMemory("Australian guidance on rainwater tanks (enHealth): aperture of 1 mm or less")),
    STANDING_WATER("gutter.standing-water", Severity.WARNING,
            "Water that stands in a gutter breeds mosquitoes and rots leaves. Hang the gutter with an even"
                    + " fall and clean it before the rains.",
            "", Source.read("Development Technology Unit, University of Warwick, web pages on guttering")),
    OVERHANGING_TREES("roof.overhanging-trees", Severity.WARNING,
            "Leaves and the animals that climb branches foul roof, gutter and tank. Cut back what overhangs,"
                    + " or clean far more often.",
            "", Source.fromMemory("enHealth, Guidance on use of rainwater tanks, on overhanging vegetation")),
    COVER_AND_CLEAN("tank.cover-and-clean", Severity.WARNING,
            "Cover the tank, screen its inlet, turn the first rain away, and clean mesh, gutters and diverter"
                    + " before the rains and once or twice a year.",
            "", Source.read("a training course on rainwater harvesting of the Digital Campus; once or twice a"
                    + " year is common practice")),
    POLLUTED_AIR("roof.polluted-air", Severity.DANGER,
            "Do not drink from roofs near heavy traffic, smelters or other industry.",
            "Ask the health authority.",
            Source.read("a South Australian government fact sheet on rainwater tanks")),
    LADDER_WORK("roof.ladder-work", Severity.DANGER,
            "Falls kill people who clean gutters. Use a sound ladder on firm ground, tied or held, three"
                    + " points of contact, never alone, never in wind or near power lines; better still, a gutter that"
                    + " can be cleaned from the ground.",
            "Ask a licensed roofer for anything beyond a ladder's reach, and the local rules on work at"
                    + " height.",
            Source.fromMemory("UK Health and Safety Executive, Safe use of ladders and stepladders, INDG455")),
    OVERFLOW_AT_FOUNDATION("tank.overflow-at-foundation", Severity.WARNING,
            "Overflow that soaks in beside a wall weakens its foundation and the tank's own. Lead it away to"
                    + " ground that falls off, or to a soakaway 5 m or more from any foundation.",
            "Ask an engineer where the ground is clay or steep, and the local code.",
            Soakaway.SOURCE),
    TANK_WEIGHT("tank.weight", Severity.DANGER,
            "Each cubic metre of water weighs 998 kg (9.79 kN), besides the tank. A tank that falls or leans"
                    + " kills.",
            "Ask a structural engineer for any raised tank, any stand, and any tank on doubtful ground.",
            Source.derived("density of water at 20 degrees C times standard gravity")),
    BURIED_TANK("tank.buried", Severity.DANGER,
            "Ground water can lift an empty tank out of the ground, and wheels or wet soil can crush it. Do"
                    + " not empty it while the ground is wet.",
            "Ask a structural engineer.",
            Source.fromMemory("EN 1997-1, Geotechnical design, limit state of uplift")),
    CONFINED_SPACE("tank.confined-space", Severity.DANGER,
            "Never enter a tank alone, or to rescue someone: the air in it can kill within minutes. Clean it"
                    + " from outside where possible. No one goes in without a tested atmosphere (oxygen 19.5 to 23.5 %,"
                    + " flammable gas below a tenth of its lower limit), fresh air blown in, an attendant outside and a"
                    + " way to be hauled out; no petrol engine inside or at the opening.",
            "Ask those licensed for confined spaces.",
            Source.read("Logan City Council on cleaning tanks; the limits are from memory, verify against"
                    + " 29 CFR 1910.146"));

    /** How bad it can get. */
    public enum Severity {
        /** The water, the building or the system may suffer. */
        WARNING,
        /** Someone can be hurt or made ill. */
        DANGER
    }

    private final String code;
    private final Severity severity;
    private final String text;
    private final String askWhom;
    private final Source source;

    RoofCaution(String code, Severity severity, String text, String askWhom, Source source) {
        this.code = code;
        this.severity = severity;
        this.text = text;
        this.askWhom = askWhom;
        this.source = source;
    }

    /** Stable, for programs. */
    public String code() {
        return code;
    }

    public Severity severity() {
        return severity;
    }

    /** In plain words, in full sentences. */
    public String text() {
        return text;
    }

    /** Who must be asked, in a sentence; empty where nobody can be hurt. */
    public String askWhom() {
        return askWhom;
    }

    public Source source() {
        return source;
    }
}
