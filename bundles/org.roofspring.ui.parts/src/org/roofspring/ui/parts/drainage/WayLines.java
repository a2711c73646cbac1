package org.roofspring.ui.parts.drainage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.roofspring.calc.FindingValue;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.Units;
import org.roofspring.site.Conduit;
import org.roofspring.site.FirstFlushDiverter;
import org.roofspring.site.Gutter;
import org.roofspring.site.GutterOutlet;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Receiver;
import org.roofspring.site.Roof;
import org.roofspring.site.RoofDrain;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.session.FindingKey;
import org.roofspring.ui.session.SiteSession;

/** Reads the lines out of a session: the parts from its site, the figures from its results. */
final class WayLines {
    private static final String DRAINAGE = "roof.drainage";
    private static final String UTILISATION = "utilisation";

    private final SiteResults results;
    private final QuantityFormat format;
    private final boolean stale;
    private final Map<String, String> roofNames = new HashMap<>();

    private WayLines(SiteSession session) {
        results = session.live().results();
        format = session.format();
        stale = session.live().outOfDate(DRAINAGE);
        session.site().getRoofs().forEach(roof -> roofNames.put(roof.getId(), Words.name(roof)));
    }

    /** One line for each roof in use, with its way below it. */
    static List<WayLine> of(SiteSession session) {
        WayLines lines = new WayLines(session);
        return session.site().getRoofs().stream().filter(Roof::isInUse).map(lines::roof).toList();
    }

    private WayLine roof(Roof roof) {
        List<String> path = List.of(roof.getId());
        List<WayLine> onward = new ArrayList<>();
        for (RoofDrain drain : roof.getDrains()) {
            part(drain.getTo(), path).ifPresent(onward::add);
        }
        String words = onward.isEmpty() ? "drains nowhere" : number(roof, "collectionEfficiency")
                .map(share -> format.format(share) + " of the years' runoff reaches the downpipes" + litres(roof))
                .orElse("not known: see its cautions");
        return new WayLine(path, roof.eClass(), Words.name(roof), text(roof, "flow"), "", OptionalDouble.empty(), "",
                words, stale, key(roof, "collectionEfficiency"), onward);
    }

    private String litres(Roof roof) {
        Optional<Quantity> lost = number(roof, "lostPerYear").filter(volume -> volume.si() > 0);
        return lost.map(volume -> "; gutters lose " + format.format(volume) + " a year, 25 mm wider ones would save "
                + number(roof, "largerGutterGain").map(format::format).orElse("some of it")).orElse("");
    }

    /** A part and what follows; nothing where there is none, or where the way has come round to it again. */
    private Optional<WayLine> part(Receiver part, List<String> before) {
        if (part == null || before.contains(part.getId())) {
            return Optional.empty();
        }
        List<String> path = longer(before, part);
        List<WayLine> onward = new ArrayList<>();
        if (part instanceof Gutter gutter) {
            gutter.getOutlets().forEach(outlet -> onward.add(outlet(outlet, path)));
        } else if (part instanceof Conduit conduit) {
            part(conduit.getDrainsTo(), path).ifPresent(onward::add);
        }
        return Optional.of(line(part, path, part instanceof Gutter ? "runoff" : "flow", onward));
    }

    private WayLine outlet(GutterOutlet outlet, List<String> before) {
        List<String> path = longer(before, outlet);
        return line(outlet, path, "flow", part(outlet.getTo(), path).map(List::of).orElse(List.of()));
    }

    private WayLine line(NamedElement part, List<String> path, String flow, List<WayLine> onward) {
        OptionalDouble utilisation = number(part, UTILISATION).map(u -> OptionalDouble.of(u.si()))
                .orElse(OptionalDouble.empty());
        String used = utilisation.isPresent()
                ? format.format(Quantity.of(Math.round(utilisation.getAsDouble() * 100), Units.PERCENT)) : "";
        String shownBy = utilisation.isPresent() ? UTILISATION : part instanceof FirstFlushDiverter ? "volume" : flow;
        return new WayLine(path, part.eClass(), shortName(part, path), text(part, flow), text(part, "capacity"),
                utilisation,
                used, words(part, utilisation), stale, key(part, shownBy), onward);
    }

    /** Its name without that of the roof above it: a gutter is often named after its roof. */
    private String shortName(NamedElement part, List<String> path) {
        String name = Words.name(part);
        String roof = roofNames.getOrDefault(path.getFirst(), "") + ", ";
        if (roof.length() == 2 || !name.startsWith(roof) || name.length() == roof.length()) {
            return name;
        }
        return Character.toUpperCase(name.charAt(roof.length())) + name.substring(roof.length() + 1);
    }

    private String words(NamedElement part, OptionalDouble utilisation) {
        if (part instanceof FirstFlushDiverter) {
            return number(part, "volume").map(volume -> "turns away the first " + format.format(volume)
                    + number(part, "drainDown").map(time -> ", empty again in " + format.format(time)).orElse(""))
                    .orElse("");
        }
        if (utilisation.isEmpty()) {
            return "";
        }
        double used = utilisation.getAsDouble();
        if (used > 1) {
            return part instanceof Gutter ? "spills in the design storm" : "too small for the design storm";
        }
        return used > WayLine.NEARLY_FULL ? "all but full" : "large enough";
    }

    private Optional<Quantity> number(NamedElement part, String finding) {
        return results.finding(DRAINAGE, finding, part.getId()).map(found -> found.value())
                .filter(FindingValue.Number.class::isInstance)
                .map(value -> ((FindingValue.Number) value).quantity());
    }

    private String text(NamedElement part, String finding) {
        return number(part, finding).map(format::format).orElse("");
    }

    private FindingKey key(NamedElement part, String finding) {
        return results.finding(DRAINAGE, finding, part.getId())
                .map(found -> new FindingKey(DRAINAGE, found)).orElse(null);
    }

    private static List<String> longer(List<String> path, NamedElement part) {
        List<String> longer = new ArrayList<>(path);
        longer.add(part.getId());
        return longer;
    }
}
