package org.roofspring.site.snapshot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;

import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.emf.common.util.ECollections;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Change;
import org.roofspring.site.Hazard;
import org.roofspring.site.Option;
import org.roofspring.site.Roof;
import org.roofspring.site.RoofDrain;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.site.Stage;
import org.roofspring.site.Tank;
import org.roofspring.site.Target;
import org.roofspring.site.internal.FreezableObject;
import org.roofspring.site.io.SiteFileException;
import org.roofspring.site.io.SiteFiles;

class SiteSnapshotTest {
    private static final SiteFactory FACTORY = SiteFactory.eINSTANCE;

    private Site site;
    private Roof roof;
    private Tank tank;
    private SiteSnapshot snapshot;

    @BeforeEach
    void makeSite() {
        site = FACTORY.createSite();
        site.setName("Mill house");
        site.setTarget(FACTORY.createTarget());
        tank = FACTORY.createTank();
        tank.setId("tank-1");
        tank.setCapacity(Quantity.of(5, Units.M3));
        roof = FACTORY.createRoof();
        roof.setId("roof-1");
        roof.setPlanArea(Quantity.of(80, Units.M2));
        roof.getHazards().add(Hazard.BIRDS);
        RoofDrain drain = FACTORY.createRoofDrain();
        drain.setTo(tank);
        roof.getDrains().add(drain);
        site.getRoofs().add(roof);
        site.getRoofs().add(FACTORY.createRoof());
        site.getTanks().add(tank);
        snapshot = SiteSnapshot.of(site, 7, Path.of("/sites/mill"));
    }

    @Test
    void isADeepCopyOfItsOwn() {
        assertEquals(7, snapshot.revision());
        assertNotSame(site, snapshot.site());
        assertEquals(Quantity.of(80, Units.M2), snapshot.site().getRoofs().get(0).getPlanArea());
        assertSame(snapshot.site().getTanks().get(0), snapshot.site().getRoofs().get(0).getDrains().get(0).getTo());
        roof.setPlanArea(Quantity.of(1, Units.M2));
        site.getTanks().clear();
        assertEquals(Quantity.of(80, Units.M2), snapshot.site().getRoofs().get(0).getPlanArea());
        assertEquals(1, snapshot.site().getTanks().size());
    }

    @Test
    void findsElementsByIdentifier() {
        assertSame(snapshot.site().getTanks().get(0), snapshot.find("tank-1").orElseThrow());
        assertSame(snapshot.site().getTanks().get(0), snapshot.find("tank-1", Tank.class).orElseThrow());
        assertEquals(Optional.empty(), snapshot.find("tank-1", Roof.class));
        assertEquals(Optional.empty(), snapshot.find("nobody"));
        assertSame(snapshot.site().getRoofs().get(1), snapshot.find("roof#1").orElseThrow(),
                "an element without identifier gets one in the copy");
        assertNull(site.getRoofs().get(1).getId(), "and none in the site");
    }

    @Test
    void twoElementsWithOneIdentifierAreRefused() {
        tank.setId("roof-1");
        assertThrows(IllegalArgumentException.class, () -> SiteSnapshot.of(site, 1, null));
    }

    @Test
    void referencesOutOfTheSiteAreLeftOut() {
        roof.getDrains().get(0).setTo(FACTORY.createTank());
        assertNull(SiteSnapshot.of(site, 1, null).site().getRoofs().get(0).getDrains().get(0).getTo());
    }

    /** Every way to write that Java or EMF offers throws, and afterwards nothing has changed. */
    @Test
    void everyWriteIsRefusedBeforeAnythingChanges() {
        Site frozen = snapshot.site();
        Roof frozenRoof = frozen.getRoofs().get(0);
        Tank frozenTank = frozen.getTanks().get(0);
        EList<Roof> roofs = frozen.getRoofs();
        EList<Hazard> hazards = frozenRoof.getHazards();
        InternalEList<Roof> internal = (InternalEList<Roof>) roofs;
        InternalEObject object = (InternalEObject) frozenRoof;
        Roof other = FACTORY.createRoof();
        Target target = FACTORY.createTarget();
        List<Executable> writes = List.of(
                () -> frozenRoof.setPlanArea(Quantity.of(1, Units.M2)),
                () -> frozenRoof.setPlanArea(null),
                () -> frozenRoof.setInUse(false),
                () -> frozenRoof.setName("x"),
                () -> frozenRoof.eSet(Literals.ROOF__PLAN_AREA, null),
                () -> frozenRoof.eUnset(Literals.ROOF__PLAN_AREA),
                () -> frozenRoof.eUnset(Literals.ROOF__DRAINS),
                () -> object.eSet(3, null),
                () -> object.eUnset(3),
                () -> ((EStructuralFeature.Setting) roofs).set(List.of()),
                () -> ((EStructuralFeature.Setting) roofs).unset(),
                () -> object.eSetting(Literals.ROOF__PLAN_AREA).set(null),
                () -> object.eSetting(Literals.ROOF__PLAN_AREA).unset(),
                () -> frozen.setTarget(target),
                () -> frozen.setTarget(null),
                () -> frozenRoof.getDrains().get(0).setTo(null),
                () -> roofs.add(other),
                () -> roofs.add(0, other),
                () -> roofs.addAll(List.of(other)),
                () -> roofs.addAll(0, List.of(other)),
                () -> internal.addUnique(other),
                () -> internal.addUnique(0, other),
                () -> internal.addAllUnique(List.of(other)),
                () -> internal.basicAdd(other, null),
                () -> internal.basicRemove(frozenRoof, null),
                () -> internal.setUnique(0, other),
                () -> roofs.set(0, other),
                () -> roofs.remove(0),
                () -> roofs.remove(frozenRoof),
                () -> roofs.removeAll(List.of(frozenRoof)),
                () -> roofs.retainAll(List.of()),
                () -> roofs.removeIf(any -> true),
                () -> roofs.replaceAll(any -> other),
                () -> roofs.sort(Comparator.comparing(Roof::getId)),
                () -> roofs.clear(),
                () -> roofs.move(1, 0),
                () -> roofs.move(1, frozenRoof),
                () -> ECollections.reverse(roofs),
                () -> {
                    var iterator = roofs.iterator();
                    iterator.next();
                    iterator.remove();
                },
                () -> {
                    var iterator = roofs.listIterator();
                    iterator.next();
                    iterator.set(other);
                },
                () -> roofs.listIterator().add(other),
                () -> roofs.subList(0, 1).clear(),
                () -> hazards.add(Hazard.DUST),
                () -> hazards.remove(Hazard.BIRDS),
                () -> hazards.set(0, Hazard.DUST),
                () -> hazards.clear(),
                () -> EcoreUtil.remove(frozenRoof),
                () -> EcoreUtil.delete(frozenTank),
                () -> EcoreUtil.replace(frozenRoof, other),
                () -> object.eSetProxyURI(URI.createURI("x")),
                () -> ((EStructuralFeature.Internal.DynamicValueHolder) object).dynamicSet(4, null),
                () -> ((EStructuralFeature.Internal.DynamicValueHolder) object).dynamicUnset(4),
                () -> object.eBasicSetContainer(null, InternalEObject.EOPPOSITE_FEATURE_BASE, null),
                () -> object.eBasicRemoveFromContainer(null),
                () -> object.eSetResource((Resource.Internal) resource(), null),
                () -> resource().getContents().add(frozen),
                () -> EcoreUtil.setID(frozenRoof, "y"));
        String before = Fingerprint.of(frozen);
        Set<String> places = Set.copyOf(places(frozen));
        String liveBefore = Fingerprint.of(site);
        for (int i = 0; i < writes.size(); i++) {
            String number = "write " + i;
            assertThrows(IllegalStateException.class, writes.get(i), number);
            assertEquals(before, Fingerprint.of(frozen), number);
            assertEquals(places, Set.copyOf(places(frozen)), number);
            assertEquals(liveBefore, Fingerprint.of(site), number);
            assertSame(frozen, frozenRoof.eContainer(), number);
            assertNull(frozen.eResource(), number);
            assertFalse(frozenRoof.eIsProxy(), number);
            assertNull(target.eContainer(), number);
            assertNull(other.eContainer(), number);
        }
    }

    @Test
    void aPartOfASnapshotCannotBeMovedIntoAnotherSite() {
        Site frozen = snapshot.site();
        List<String> places = places(frozen);
        assertThrows(IllegalStateException.class, () -> site.getRoofs().add(frozen.getRoofs().get(0)));
        assertThrows(IllegalStateException.class, () -> site.setTarget(frozen.getTarget()));
        assertEquals(places, places(frozen));
        assertSame(frozen, frozen.getTarget().eContainer());
    }

    private static List<String> places(Site frozen) {
        List<String> places = new ArrayList<>();
        frozen.eAllContents().forEachRemaining(object -> places.add(EcoreUtil.getRelativeURIFragmentPath(frozen, object)
                + System.identityHashCode(object)));
        return places;
    }

    private static Resource resource() {
        return SiteFiles.newResourceSet().createResource(URI.createURI("x.site"));
    }

    @Test
    void adaptersCannotBeAttached() {
        EList<Adapter> adapters = snapshot.site().eAdapters();
        assertThrows(UnsupportedOperationException.class, () -> adapters.add(new AdapterImpl()));
    }

    @Test
    void readingEverythingCreatesNothing() throws Exception {
        List<Object> lists = lists(snapshot.site());
        try (ExecutorService threads = Executors.newFixedThreadPool(4)) {
            List<Callable<List<Object>>> readers = new ArrayList<>();
            IntStream.range(0, 16).forEach(i -> readers.add(() -> lists(snapshot.site())));
            for (Future<List<Object>> read : threads.invokeAll(readers)) {
                List<Object> seen = read.get();
                assertEquals(lists.size(), seen.size());
                for (int i = 0; i < seen.size(); i++) {
                    assertSame(lists.get(i), seen.get(i), "a list was made anew by a reader");
                }
            }
        }
    }

    private static List<Object> lists(Site frozen) {
        List<Object> lists = new ArrayList<>();
        List<EObject> all = new ArrayList<>(List.of(frozen));
        frozen.eAllContents().forEachRemaining(all::add);
        for (EObject object : all) {
            for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
                Object value = object.eGet(feature);
                if (value instanceof Collection<?>) {
                    lists.add(value);
                }
            }
        }
        return lists;
    }

    @Test
    void everyObjectIsFrozen() {
        assertTrue(((FreezableObject) snapshot.site()).isFrozen());
        snapshot.site().eAllContents().forEachRemaining(object -> assertTrue(((FreezableObject) object).isFrozen()));
        assertFalse(((FreezableObject) site).isFrozen());
    }

    @Test
    void aFrozenSiteCanBeCopiedAndSnapshotAgain() {
        Site thawed = EcoreUtil.copy(snapshot.site());
        thawed.getRoofs().clear();
        assertEquals(2, SiteSnapshot.of(snapshot.site(), 8, null).site().getRoofs().size());
    }

    @Test
    void fingerprintsTellEqualFromChanged() {
        String first = snapshot.fingerprint(snapshot.site());
        assertTrue(first.matches("sha256:[0-9a-f]{64}"), first);
        assertEquals(first, SiteSnapshot.of(site, 8, null).fingerprint(SiteSnapshot.of(site, 9, null).site()));
        roof.setPlanArea(Quantity.of(81, Units.M2));
        SiteSnapshot second = SiteSnapshot.of(site, 8, null);
        assertNotEquals(first, second.fingerprint(second.site()));
        assertEquals(snapshot.fingerprint(snapshot.site(), List.of(Literals.SITE__TANKS)),
                second.fingerprint(second.site(), List.of(Literals.SITE__TANKS)), "the tanks have not changed");
        assertNotEquals(snapshot.fingerprint(snapshot.site(), List.of(Literals.SITE__ROOFS)),
                second.fingerprint(second.site(), List.of(Literals.SITE__ROOFS)));
        roof.setPlanArea(Quantity.of(80, Units.M2));
        assertEquals(first, Fingerprint.of(SiteSnapshot.of(site, 9, null).site()), "undo brings it back");
    }

    @Test
    void fingerprintsCountOrderLinksAndBorders() {
        Site a = FACTORY.createSite();
        a.setName("ab");
        a.setNote("c");
        Site b = FACTORY.createSite();
        b.setName("a");
        b.setNote("bc");
        assertNotEquals(Fingerprint.of(a), Fingerprint.of(b));
        assertNotEquals(Fingerprint.of(List.of("a", "b")), Fingerprint.of(List.of("ab")));
        String before = Fingerprint.of(site);
        site.getRoofs().move(0, 1);
        assertNotEquals(before, Fingerprint.of(site));
        site.getRoofs().move(0, 1);
        assertEquals(before, Fingerprint.of(site));
        roof.getDrains().get(0).setTo(null);
        assertNotEquals(before, Fingerprint.of(site));
    }

    @Test
    void pathsStartAtTheFolderAndStayInIt() throws SiteFileException {
        assertEquals(Path.of("/sites/mill/rain/upland.csv"), snapshot.resolve("rain/upland.csv"));
        assertEquals(Path.of("/sites/mill/a.csv"), snapshot.resolve("rain/../a.csv"));
        assertEquals(Optional.of(Path.of("/sites/mill")), snapshot.folder());
        for (String bad : List.of("../x.csv", "rain/../../x.csv", "/etc/passwd", "", ".", "..\\x.csv", "a\u0000b")) {
            assertThrows(SiteFileException.class, () -> snapshot.resolve(bad), bad);
        }
        SiteSnapshot unsaved = SiteSnapshot.of(site, 1, null);
        assertTrue(assertThrows(SiteFileException.class, () -> unsaved.resolve("a.csv")).getMessage()
                .contains("save the site first"));
    }

    @Test
    void anOptionIsAppliedToACopy() {
        Option option = FACTORY.createOption();
        option.setId("opt");
        change(option, roof, "planArea", "120 m2");
        change(option, tank, "inUse", "false");
        change(option, roof, "hazards", "dust birds");
        change(option, tank, "capacity", null);
        change(option, tank, "overflowsTo", "tank-1");
        site.getOptions().add(option);
        SiteSnapshot base = SiteSnapshot.of(site, 1, null);
        SiteSnapshot changed = base.with("opt");
        Roof changedRoof = changed.site().getRoofs().get(0);
        assertEquals(Quantity.of(120, Units.M2), changedRoof.getPlanArea());
        assertEquals(List.of(Hazard.DUST, Hazard.BIRDS), changedRoof.getHazards());
        Tank changedTank = changed.site().getTanks().get(0);
        assertFalse(changedTank.isInUse());
        assertNull(changedTank.getCapacity());
        assertSame(changedTank, changedTank.getOverflowsTo());
        assertTrue(((FreezableObject) changedRoof).isFrozen());
        assertEquals(Quantity.of(80, Units.M2), base.site().getRoofs().get(0).getPlanArea());
        assertEquals(1, changed.revision());
    }

    @Test
    void aStageStandsOnTheStagesBeforeIt() {
        for (String name : List.of("one", "two", "three")) {
            Stage stage = FACTORY.createStage();
            stage.setId(name);
            site.getStages().add(stage);
        }
        change(site.getStages().get(0), roof, "planArea", "100 m2");
        change(site.getStages().get(0), tank, "capacity", "6 m3");
        change(site.getStages().get(1), tank, "capacity", "9 m3");
        change(site.getStages().get(2), roof, "planArea", "300 m2");
        SiteSnapshot second = SiteSnapshot.of(site, 1, null).with("two");
        assertEquals(Quantity.of(100, Units.M2), second.site().getRoofs().get(0).getPlanArea());
        assertEquals(Quantity.of(9, Units.M3), second.site().getTanks().get(0).getCapacity());
    }

    @Test
    void changesThatCannotBeMadeAreNamed() {
        assertEquals("there is no option with the identifier \"none\"", refusal("none"));
        Option option = FACTORY.createOption();
        option.setId("opt");
        site.getOptions().add(option);
        Change change = change(option, roof, "colour", "red");
        assertEquals(roof + " has no feature \"colour\" that an option can change", refusal("opt"));
        change.setFeature("drains");
        assertEquals(roof + " has no feature \"drains\" that an option can change", refusal("opt"));
        change.setFeature("id");
        assertEquals(roof + " has no feature \"id\" that an option can change", refusal("opt"));
        change.setFeature("planArea");
        change.setValue("3 kg");
        assertEquals("a change of planArea of " + roof + " cannot be made: \"3 kg\" is a mass, but an area is needed "
                + "(m2, cm2, ha, ft2)", refusal("opt"));
        change.setElement(tank);
        change.setFeature("overflowsTo");
        change.setValue("nobody");
        assertEquals("a change of overflowsTo of " + tank + " cannot be made: \"nobody\" is not the identifier of a "
                + "Receiver", refusal("opt"));
        change.setElement(null);
        assertTrue(refusal("opt").contains("names no element or no feature"));
    }

    private String refusal(String id) {
        SiteSnapshot base = SiteSnapshot.of(site, 1, null);
        return assertThrows(IllegalArgumentException.class, () -> base.with(id)).getMessage();
    }

    private static Change change(Option option, org.roofspring.site.NamedElement element, String feature,
            String value) {
        Change change = FACTORY.createChange();
        change.setElement(element);
        change.setFeature(feature);
        change.setValue(value);
        option.getChanges().add(change);
        return change;
    }
}
