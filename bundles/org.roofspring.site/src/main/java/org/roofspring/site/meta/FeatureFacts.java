package org.roofspring.site.meta;

import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EModelElement;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.quantity.Dimension;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.site.internal.ValueText;

/**
 * What the model says about a feature. Editors, validation, import and calculations read the same facts, so that a
 * range or a default stands in one place.
 *
 * @param feature       the feature
 * @param documentation what it means, in plain words
 * @param dimension     what it measures; empty unless it is a quantity of one dimension
 * @param usualUnit     the unit it is usually shown in; empty unless it is a quantity of one dimension
 * @param minimum       least value, in the SI-based unit of the dimension
 * @param aboveMinimum  whether the least value itself is refused
 * @param maximum       greatest value, in the SI-based unit of the dimension
 * @param defaultValue  what calculations take when no value is given
 * @param defaultSource where that default comes from, to be shown beside it
 */
public record FeatureFacts(EStructuralFeature feature, String documentation, Optional<Dimension> dimension,
        Optional<Unit> usualUnit, OptionalDouble minimum, boolean aboveMinimum, OptionalDouble maximum,
        Optional<Quantity> defaultValue, Optional<String> defaultSource) {
    /** Source of the annotation of a feature; details min, above, max (SI-based), default and defaultSource. */
    private static final String VALUE = "http://www.roofspring.org/value";

    /** The facts of a feature, as its annotations give them. */
    public static FeatureFacts of(EStructuralFeature feature) {
        Optional<Dimension> dimension = dimension(feature);
        OptionalDouble minimum = number(feature, "min");
        OptionalDouble above = number(feature, "above");
        return new FeatureFacts(feature, documentation(feature), dimension, usualUnit(feature),
                above.isPresent() ? above : minimum, above.isPresent(), number(feature, "max"),
                detail(feature, VALUE, "default").map(text -> Quantity.parse(text, dimension.orElseThrow())),
                detail(feature, VALUE, "defaultSource"));
    }

    /** What a class, feature, data type or literal means. */
    public static String documentation(EModelElement element) {
        return Optional.ofNullable(EcoreUtil.getDocumentation(element)).orElse("");
    }

    /** The dimension of a feature that is a quantity of one dimension. */
    public static Optional<Dimension> dimension(EStructuralFeature feature) {
        return detail(feature.getEType(), ValueText.QUANTITY, "dimension").map(Dimension::valueOf);
    }

    private static Optional<Unit> usualUnit(EStructuralFeature feature) {
        return detail(feature.getEType(), ValueText.QUANTITY, "unit").flatMap(Units::find);
    }

    /** Whether the feature is a quantity, of one or of any dimension. */
    public static boolean isQuantity(EStructuralFeature feature) {
        return feature.getEType() instanceof EDataType type && type.getInstanceClass() == Quantity.class;
    }

    /**
     * The value that an object has, or else the default with its source; empty when neither is there.
     *
     * @throws IllegalArgumentException when the feature is not a single quantity
     */
    public Optional<KnownValue> valueIn(EObject object) {
        if (!isQuantity(feature) || feature.isMany()) {
            throw new IllegalArgumentException(feature.getName() + " is not a single quantity");
        }
        Quantity given = (Quantity) object.eGet(feature);
        return given != null ? Optional.of(new KnownValue(given, Optional.empty()))
                : defaultValue.map(value -> new KnownValue(value, defaultSource));
    }

    /** Why a value is refused, in a few words such as "must be above 0 m2", or empty when it is in range. */
    public Optional<String> refusal(Quantity value) {
        return dimension.isPresent() && value.dimension() != dimension.get()
                ? Optional.of("must be " + dimension.get().noun() + ", not " + value.dimension().noun())
                : refusal(value.si());
    }

    /** Why a number, in the SI-based unit, is refused; empty when it is in range. */
    public Optional<String> refusal(double si) {
        if (minimum.isPresent() && (aboveMinimum ? si <= minimum.getAsDouble() : si < minimum.getAsDouble())) {
            return Optional.of("must be " + (aboveMinimum ? "above " : "at least ") + shown(minimum.getAsDouble()));
        }
        return maximum.isPresent() && si > maximum.getAsDouble()
                ? Optional.of("must be at most " + shown(maximum.getAsDouble())) : Optional.empty();
    }

    private String shown(double si) {
        QuantityFormat format = QuantityFormat.metric();
        return usualUnit.map(unit -> format.format(Quantity.ofSi(si, unit))).orElseGet(() -> format.number(si));
    }

    private static OptionalDouble number(EModelElement element, String key) {
        String text = EcoreUtil.getAnnotation(element, VALUE, key);
        return text == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }

    private static Optional<String> detail(EModelElement element, String source, String key) {
        return Optional.ofNullable(EcoreUtil.getAnnotation(element, source, key));
    }
}
