package org.roofspring.cli.internal;

import org.roofspring.quantity.Dimension;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityException;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads options that carry a unit; one small class a dimension, since the option parser wants classes. */
abstract class QuantityOption implements ITypeConverter<Quantity> {
    private final Dimension dimension;

    QuantityOption(Dimension dimension) {
        this.dimension = dimension;
    }

    @Override
    public Quantity convert(String text) {
        try {
            return Quantity.parse(text, dimension);
        } catch (QuantityException e) {
            throw new TypeConversionException(e.getMessage());
        }
    }

    static final class Length extends QuantityOption {
        Length() {
            super(Dimension.LENGTH);
        }
    }

    static final class Area extends QuantityOption {
        Area() {
            super(Dimension.AREA);
        }
    }

    static final class Volume extends QuantityOption {
        Volume() {
            super(Dimension.VOLUME);
        }
    }

    static final class Flow extends QuantityOption {
        Flow() {
            super(Dimension.FLOW);
        }
    }

    static final class Temperature extends QuantityOption {
        Temperature() {
            super(Dimension.TEMPERATURE);
        }
    }

    static final class Ratio extends QuantityOption {
        Ratio() {
            super(Dimension.RATIO);
        }
    }

    static final class Intensity extends QuantityOption {
        Intensity() {
            super(Dimension.INTENSITY);
        }
    }

    static final class Concentration extends QuantityOption {
        Concentration() {
            super(Dimension.CONCENTRATION);
        }
    }

    static final class Duration extends QuantityOption {
        Duration() {
            super(Dimension.DURATION);
        }
    }

    static final class Density extends QuantityOption {
        Density() {
            super(Dimension.DENSITY);
        }
    }

    static final class UvDose extends QuantityOption {
        UvDose() {
            super(Dimension.UV_DOSE);
        }
    }

    static final class Turbidity extends QuantityOption {
        Turbidity() {
            super(Dimension.TURBIDITY);
        }
    }

    static final class Money extends QuantityOption {
        Money() {
            super(Dimension.MONEY);
        }
    }
}
