package org.roofspring.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import java.util.random.RandomGenerator;

import org.junit.jupiter.api.Test;
import org.roofspring.site.SitePackage.Literals;

class IdsTest {
    @Test
    void identifiersTellWhatTheyName() {
        String id = Ids.newId(SiteFactory.eINSTANCE.createSite(), Literals.FIRST_FLUSH_DIVERTER);
        assertTrue(id.matches("first-flush-diverter-[2-9a-z]{4}"), id);
    }

    @Test
    void aTakenIdentifierIsNotGivenAgain() {
        RandomGenerator always = () -> 0;
        String first = Ids.newId(Literals.TANK, id -> false, always);
        String second = Ids.newId(Literals.TANK, first::equals, always);
        assertEquals("tank-2222", first);
        assertEquals("tank-22222", second);
    }

    @Test
    void missingOnesAreFilledAndOthersKept() {
        Site site = SiteFactory.eINSTANCE.createSite();
        Set<String> all = new HashSet<>();
        for (int i = 0; i < 2000; i++) {
            site.getTanks().add(SiteFactory.eINSTANCE.createTank());
        }
        site.getTanks().get(0).setId("mine");
        Ids.assignMissing(site);
        site.getTanks().forEach(tank -> all.add(tank.getId()));
        assertEquals(2000, all.size());
        assertEquals("mine", site.getTanks().get(0).getId());
        assertNotEquals(null, site.getId());
    }
}
