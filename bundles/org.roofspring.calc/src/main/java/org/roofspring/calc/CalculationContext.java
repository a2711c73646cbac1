package org.roofspring.calc;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/** What a running calculation may ask of its surroundings, and nothing else. */
public interface CalculationContext {

    /** True once the answer is no longer wanted; cheap enough for every thousandth turn of a loop. */
    BooleanSupplier cancelled();

    /** Seed for random numbers: the same site gives the same seed. */
    long randomSeed();

    /** Progress from 0 to 1, shown where the run takes long; other values are clamped. */
    default void progress(double share) {
    }

    /** Throws when the answer is no longer wanted. */
    default void checkCancelled() {
        if (cancelled().getAsBoolean()) {
            throw new CancellationException();
        }
    }
}
