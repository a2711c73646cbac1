package org.roofspring.site.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.roofspring.quantity.Dimension;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityException;
import org.roofspring.quantity.Units;
import org.roofspring.site.SitePackage;
import org.roofspring.site.internal.ValueTextFactory;

/** Values become text and back, and a wrong dimension is refused, with the generated code and without it. */
class ValueTextTest {
    static EPackage[] models() {
        ValueTextFactory.register();
        ResourceSetImpl resources = new ResourceSetImpl();
        resources.getResourceFactoryRegistry().getExtensionToFactoryMap().put("ecore", new EcoreResourceFactoryImpl());
        URI file = URI.createFileURI(Path.of("src/main/resources/model/site.ecore").toAbsolutePath().toString());
        EPackage dynamic = (EPackage) resources.getResource(file, true).getContents().get(0);
        return new EPackage[] {SitePackage.eINSTANCE, dynamic};
    }

    private static EDataType type(EPackage model, String name) {
        return (EDataType) model.getEClassifier(name);
    }

    @ParameterizedTest
    @MethodSource("models")
    void quantitiesKeepTheUnitThatWasTyped(EPackage model) {
        EDataType bore = type(model, "Bore");
        Quantity value = (Quantity) EcoreUtil.createFromString(bore, "41.8mm");
        assertEquals(Quantity.of(41.8, Units.MM), value);
        assertEquals("41.8 mm", EcoreUtil.convertToString(bore, value));
        assertEquals("1.5 in", EcoreUtil.convertToString(bore, EcoreUtil.createFromString(bore, "1.5in")));
    }

    @ParameterizedTest
    @MethodSource("models")
    void anotherDimensionIsRefused(EPackage model) {
        QuantityException e = assertThrows(QuantityException.class,
                () -> EcoreUtil.createFromString(type(model, "Area"), "12 s"));
        assertEquals("\"12 s\" is a time, but an area is needed (m2, cm2, ha, ft2)", e.getMessage());
    }

    @ParameterizedTest
    @MethodSource("models")
    void anUnknownUnitIsRefused(EPackage model) {
        QuantityException e = assertThrows(QuantityException.class,
                () -> EcoreUtil.createFromString(type(model, "Volume"), "5 buckets"));
        assertEquals("\"buckets\" is not a known unit; a volume is needed (L, m3, mL, galUS, galImp)",
                e.getMessage());
    }

    @ParameterizedTest
    @MethodSource("models")
    void metresAreAHeadOfWaterWhereAPressureIsDue(EPackage model) {
        Quantity value = (Quantity) EcoreUtil.createFromString(type(model, "PressureHead"), "2 m");
        assertEquals(Dimension.PRESSURE, value.dimension());
        assertEquals("2 m(head)", EcoreUtil.convertToString(type(model, "PressureHead"), value));
    }

    @ParameterizedTest
    @MethodSource("models")
    void aMeasurementMayHaveAnyDimension(EPackage model) {
        EDataType measurement = type(model, "Measurement");
        assertEquals(Quantity.of(7.2), EcoreUtil.createFromString(measurement, "7.2"));
        assertEquals(Quantity.of(0.4, Units.MG_PER_L), EcoreUtil.createFromString(measurement, "0.4 mg/L"));
    }

    @ParameterizedTest
    @MethodSource("models")
    void anEmptyTextIsNoValue(EPackage model) {
        assertNull(EcoreUtil.createFromString(type(model, "Area"), null));
        assertNull(EcoreUtil.createFromString(type(model, "Area"), " "));
        assertNull(EcoreUtil.createFromString(type(model, "Date"), ""));
        assertNull(EcoreUtil.convertToString(type(model, "Area"), null));
        assertNull(EcoreUtil.convertToString(type(model, "Date"), null));
    }

    @ParameterizedTest
    @MethodSource("models")
    void daysAndTimes(EPackage model) {
        assertTwoWays(type(model, "Date"), "2024-02-29", LocalDate.of(2024, 2, 29));
        assertTwoWays(type(model, "DayOfYear"), "02-29", MonthDay.of(2, 29));
        assertTwoWays(type(model, "TimeOfDay"), "10:30", LocalTime.of(10, 30));
        assertRefused(type(model, "Date"), "2023-02-29", "\"2023-02-29\" is not a day such as 2024-03-31");
        assertRefused(type(model, "DayOfYear"), "13-01",
                "\"13-01\" is not a day of the year such as 03-31 (month, day)");
        assertRefused(type(model, "TimeOfDay"), "25:00", "\"25:00\" is not a time of day such as 10:30");
    }

    private static void assertTwoWays(EDataType type, String text, Object value) {
        assertEquals(value, EcoreUtil.createFromString(type, text));
        assertEquals(text, EcoreUtil.convertToString(type, value));
    }

    private static void assertRefused(EDataType type, String text, String message) {
        assertEquals(message, assertThrows(IllegalArgumentException.class,
                () -> EcoreUtil.createFromString(type, text)).getMessage());
    }
}
