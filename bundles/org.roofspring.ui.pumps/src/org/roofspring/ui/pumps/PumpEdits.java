package org.roofspring.ui.pumps;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.roofspring.calc.standard.review.Basis;
import org.roofspring.calc.standard.review.PumpBasis;
import org.roofspring.hydraulics.pump.PumpCurve;
import org.roofspring.hydraulics.pump.PumpFile;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.site.Element;
import org.roofspring.site.Ids;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpCandidate;
import org.roofspring.site.PumpPoint;
import org.roofspring.site.Remark;
import org.roofspring.site.RemarkKind;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.site.edit.Words;
import org.roofspring.site.meta.Violation;
import org.roofspring.ui.session.SiteSession;

/** The edits of the board. Each is one step of undo. */
public final class PumpEdits {
    /** Digits of a value that was read: more than anybody measures, fewer than the noise of converting units. */
    private static final MathContext DIGITS = new MathContext(12);

    /**
     * Who says something.
     *
     * @param author name
     * @param role   in what capacity
     */
    public record Reviewer(String author, String role) {
    }

    private PumpEdits() {
    }

    /**
     * Adds the pumps of files as candidates for a pump, all in one step.
     *
     * @param files tables as the command line reads them
     * @return the new candidates
     * @throws IOException              when a file cannot be read
     * @throws IllegalArgumentException with one sentence when a file is no such table; then nothing has changed
     */
    public static List<PumpCandidate> importFiles(SiteSession session, Pump pump, List<Path> files)
            throws IOException {
        session.takeOverInput();
        List<PumpCandidate> read = new ArrayList<>();
        for (Path file : files) {
            for (PumpCurve curve : PumpFile.readAll(file)) {
                read.add(candidate(curve, file.getFileName().toString()));
            }
        }
        Set<String> ids = new HashSet<>();
        session.site().eAllContents().forEachRemaining(object -> {
            if (object instanceof Element element) {
                ids.add(element.getId());
            }
        });
        Set<String> names = new HashSet<>();
        pump.getCandidates().forEach(candidate -> names.add(candidate.getName()));
        for (PumpCandidate candidate : read) {
            candidate.setId(Ids.newId(candidate.eClass(), ids::contains, ThreadLocalRandom.current()));
            ids.add(candidate.getId());
            candidate.setName(unused(candidate.getName(), names));
        }
        session.edits().compound("Import " + read.size() + (read.size() == 1 ? " candidate" : " candidates"), pump,
                () -> pump.getCandidates().addAll(read));
        session.select(session.selection().to(read.get(0)));
        return read;
    }

    private static String unused(String name, Set<String> taken) {
        String free = name;
        for (int number = 2; !taken.add(free); number++) {
            free = name + " (" + number + ")";
        }
        return free;
    }

    private static PumpCandidate candidate(PumpCurve curve, String file) {
        PumpCandidate candidate = SiteFactory.eINSTANCE.createPumpCandidate();
        candidate.setName(curve.name());
        candidate.setDataSource("Read from " + file + ".");
        for (org.roofspring.hydraulics.pump.PumpPoint measured : curve.points()) {
            PumpPoint point = SiteFactory.eINSTANCE.createPumpPoint();
            point.setFlow(quantity(measured.flowM3PerS(), Units.L_PER_S));
            point.setHead(quantity(measured.headM(), Units.M));
            point.setEfficiency(quantity(measured.efficiency(), Units.PERCENT));
            point.setNpshRequired(quantity(measured.npshRequiredM(), Units.M));
            point.setInputPower(quantity(measured.inputPowerW(), Units.W));
            Violation.of(point).stream().findFirst().ifPresent(violation -> {
                throw new IllegalArgumentException(file + ": pump \"" + curve.name() + "\": "
                        + Words.feature(violation.feature()).toLowerCase(java.util.Locale.ROOT) + " "
                        + violation.reason());
            });
            candidate.getPoints().add(point);
        }
        return candidate;
    }

    private static Quantity quantity(OptionalDouble si, Unit unit) {
        return si.isEmpty() ? null : quantity(si.getAsDouble(), unit);
    }

    private static Quantity quantity(double si, Unit unit) {
        return Quantity.of(new BigDecimal(unit.fromSi(si)).round(DIGITS).doubleValue(), unit);
    }

    /**
     * Leaves a question or an objection about a pump or candidate.
     *
     * @throws IllegalArgumentException with one sentence when words or a name are missing
     */
    public static Remark remark(SiteSession session, NamedElement about, RemarkKind kind, Reviewer by, String text) {
        requireText(text);
        requireName(by);
        return add(session, "Remark on " + Words.name(about), session.site(), Literals.SITE__REMARKS,
                remark -> say(remark, about, kind, by, text));
    }

    /**
     * Answers a question or an objection; whoever raised it says when it is settled.
     *
     * @throws IllegalArgumentException with one sentence when words or a name are missing
     */
    public static Remark answer(SiteSession session, Remark question, Reviewer by, String text) {
        requireText(text);
        requireName(by);
        return add(session, "Answer a remark", question, Literals.REMARK__REPLIES,
                remark -> say(remark, question.getElement(), RemarkKind.ANSWER, by, text));
    }

    /** Says that nothing is left to be done about a remark, or that something is. */
    public static void settle(SiteSession session, Remark remark, boolean settled) {
        session.takeOverInput();
        session.edits().set(remark, Literals.REMARK__SETTLED, settled);
    }

    /** Takes a remark away with its answers. */
    public static void remove(SiteSession session, Remark remark) {
        session.takeOverInput();
        session.edits().remove(List.of(remark));
    }

    /**
     * Signs a pump or candidate off, on the basis of what is on the board now.
     *
     * @param text what is to be added, or empty
     * @throws IllegalArgumentException with one sentence when the name is missing
     * @throws IllegalStateException    with one sentence when what is on the board does not hold now
     */
    public static Remark signOff(SiteSession session, NamedElement about, Reviewer by, String text) {
        requireName(by);
        session.takeOverInput();
        boolean holds = !session.live().outOfDate(ReviewAnswer.CALCULATION) && session.live().results()
                .finding(ReviewAnswer.CALCULATION, ReviewAnswer.VERDICT, about.getId()).isPresent();
        if (!holds) {
            throw new IllegalStateException("What the board shows of " + Words.name(about)
                    + " does not hold now; wait for its figures before signing");
        }
        Basis basis = about instanceof PumpCandidate candidate ? PumpBasis.of(session.site(), candidate)
                : PumpBasis.of(session.site(), (Pump) about);
        return add(session, "Sign off " + Words.name(about), session.site(), Literals.SITE__REMARKS, remark -> {
            say(remark, about, RemarkKind.ACCEPTED, by, text);
            remark.setFingerprint(basis.fingerprint());
            remark.getRestsOn().addAll(basis.lines());
        });
    }

    private static void requireText(String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException("Say in words what is meant");
        }
    }

    private static void requireName(Reviewer by) {
        if (by.author().isBlank()) {
            throw new IllegalArgumentException("Give the name of who says it");
        }
    }

    private static void say(Remark remark, NamedElement about, RemarkKind kind, Reviewer by, String text) {
        remark.setKind(kind);
        remark.setElement(about);
        remark.setAuthor(by.author().strip());
        remark.setRole(by.role().isBlank() ? null : by.role().strip());
        remark.setDate(LocalDate.now());
        remark.setText(text.isBlank() ? null : text.strip());
    }

    private static Remark add(SiteSession session, String label, EObject owner, EReference containment,
            Consumer<Remark> fill) {
        session.takeOverInput();
        Remark[] added = new Remark[1];
        session.edits().compound(label, owner, () -> {
            added[0] = (Remark) session.edits().add(owner, containment);
            fill.accept(added[0]);
        });
        return added[0];
    }
}
