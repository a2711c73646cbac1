package org.roofspring.calc;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

import org.osgi.service.component.annotations.ComponentPropertyType;

/**
 * Identity of a calculation and what it depends on. Becomes service properties, so that the registry can list a
 * calculation, draw the graph and know what an edit touches without creating it.
 */
@ComponentPropertyType
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface CalculationInfo {
    /** Prefix of the service properties. */
    String PREFIX_ = "roofspring.calculation.";

    /** Unique, dotted, lower case, such as {@code storage.balance}; third parties begin with their own domain. */
    String id();

    /** Changes whenever the same inputs may give another answer; part of the cache key. */
    String version();

    /** A short name for people. */
    String title();

    /**
     * Names of the model classes whose elements are read, such as {@code Roof}, or of single features, such as
     * {@code Site.altitude}. An edit elsewhere does not run the calculation again. {@code *} reads everything.
     */
    String[] reads();

    /** Calculations that must have completed first; their findings are in {@link Inputs}. */
    String[] requires() default {};

    /** Calculations whose findings are used when there are any. */
    String[] uses() default {};

    /** Seconds after which a run is abandoned and the plug-in set aside; 1 to 3600. */
    int deadline() default 60;
}
