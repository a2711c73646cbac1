package org.roofspring.site.internal;

import org.eclipse.emf.ecore.EDataType;

/** Gives EMF the text conversion of our data types, also where the model is used without its generated code. */
public final class ValueTextFactory implements EDataType.Internal.ConversionDelegate.Factory {
    /** Makes the conversion known where no extension registry does. */
    public static void register() {
        var registry = EDataType.Internal.ConversionDelegate.Factory.Registry.INSTANCE;
        registry.putIfAbsent(ValueText.QUANTITY, new ValueTextFactory());
        registry.putIfAbsent(ValueText.TIME, new ValueTextFactory());
    }

    @Override
    public EDataType.Internal.ConversionDelegate createConversionDelegate(EDataType type) {
        return ValueText.of(type);
    }
}
