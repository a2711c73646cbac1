package org.roofspring.calc.standard.drainage;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

import org.roofspring.calc.standard.water.DrainShares;
import org.roofspring.site.Conduit;
import org.roofspring.site.Element;
import org.roofspring.site.Gutter;
import org.roofspring.site.GutterOutlet;
import org.roofspring.site.Receiver;
import org.roofspring.site.Roof;
import org.roofspring.site.RoofDrain;
import org.roofspring.site.Site;

/**
 * What arrives at each gutter, outlet, downpipe, screen, diverter and tank. An outlet takes the share of its gutter's
 * water that its stretch of the gutter is of the whole.
 */
final class RoofWays {
    private final Map<Element, Arriving> arriving = new LinkedHashMap<>();
    private final Map<Roof, RoofArea> roofs = new LinkedHashMap<>();
    private final Map<Element, String> problems = new LinkedHashMap<>();
    private final Map<Gutter, List<Reach>> reaches = new LinkedHashMap<>();

    private final ToDoubleFunction<GutterOutlet> passes;

    /** All that the roofs shed, as though no gutter spilled. */
    RoofWays(Site site) {
        this(site, outlet -> 1);
    }

    /** @param passes share of a storm's flow that gets through to an outlet and on; the rest spills over the gutter */
    RoofWays(Site site, ToDoubleFunction<GutterOutlet> passes) {
        this.passes = passes;
        for (Gutter gutter : site.getGutters()) {
            readReaches(gutter);
        }
        for (Roof roof : site.getRoofs()) {
            if (roof.isInUse() && roof.getPlanArea() != null) {
                follow(roof);
            }
        }
    }

    private void readReaches(Gutter gutter) {
        if (!gutter.isInUse()) {
            return;
        }
        if (gutter.getLength() == null) {
            problems.put(gutter, "its length is missing");
        } else if (gutter.getOutlets().isEmpty()) {
            problems.put(gutter, "it has no outlet");
        } else {
            try {
                reaches.put(gutter, Reach.of(gutter));
            } catch (IllegalArgumentException e) {
                problems.put(gutter, e.getMessage());
            }
        }
    }

    private void follow(Roof roof) {
        try {
            RoofArea area = RoofArea.of(roof);
            roofs.put(roof, area);
            for (RoofDrain drain : roof.getDrains()) {
                pass(drain.getTo(), Arriving.of(area).times(DrainShares.of(roof, drain)), new HashSet<>());
            }
        } catch (IllegalArgumentException e) {
            problems.put(roof, e.getMessage());
        }
    }

    private void pass(Receiver receiver, Arriving water, Set<Receiver> seen) {
        if (receiver == null || !receiver.isInUse() || !seen.add(receiver)) {
            return;
        }
        arriving.merge(receiver, water, Arriving::plus);
        if (receiver instanceof Gutter gutter && reaches.containsKey(gutter)) {
            for (Reach reach : reaches.get(gutter)) {
                Arriving share = water.times(reach.wholeM() / gutter.getLength().si());
                arriving.merge(reach.outlet(), share, Arriving::plus);
                pass(reach.outlet().getTo(), share.inStorm(passes.applyAsDouble(reach.outlet())), new HashSet<>(seen));
            }
        } else if (receiver instanceof Conduit conduit) {
            pass(conduit.getDrainsTo(), water, seen);
        }
    }

    /** Roofs in use with an area that could be read. */
    Map<Roof, RoofArea> roofs() {
        return roofs;
    }

    Arriving at(Element part) {
        return arriving.getOrDefault(part, Arriving.NOTHING);
    }

    /** Stretches of a gutter, one for each outlet; empty where it could not be read. */
    List<Reach> reaches(Gutter gutter) {
        return reaches.getOrDefault(gutter, List.of());
    }

    /** What keeps a part from being checked, in words that follow its name and a colon. */
    Map<Element, String> problems() {
        return problems;
    }

    /** Gutters that some roof drains to, in the order of the site. */
    List<Gutter> gutters(Site site) {
        List<Gutter> fed = new ArrayList<>(site.getGutters());
        fed.removeIf(gutter -> !gutter.isInUse() || !arriving.containsKey(gutter));
        return fed;
    }
}
