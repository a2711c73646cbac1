package org.roofspring.cli.internal;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

import org.roofspring.quantity.Quantity;

/** Range checks that name the option as it was typed. */
final class Check {
    private Check() {
    }

    /** One of a few words, in lower case; capitals are accepted. */
    static String word(String option, String given, String... accepted) {
        String word = given.toLowerCase(Locale.ROOT);
        if (!List.of(accepted).contains(word)) {
            throw new Failures.BadInputException(
                    option + " is \"" + given + "\"; " + String.join(" or ", accepted) + " is accepted");
        }
        return word;
    }

    /** What a name stands for; the refusal says which option it was given to. */
    static <T> T named(String option, Supplier<T> value) {
        try {
            return value.get();
        } catch (IllegalArgumentException e) {
            throw new Failures.BadInputException(option + ": " + e.getMessage(), e);
        }
    }

    static double positive(String option, Quantity quantity) {
        if (!(quantity.si() > 0)) {
            throw new Failures.BadInputException(option + " is " + quantity + "; it must be more than zero");
        }
        return quantity.si();
    }

    static double notNegative(String option, Quantity quantity) {
        if (!(quantity.si() >= 0)) {
            throw new Failures.BadInputException(option + " is " + quantity + "; zero or more is accepted");
        }
        return quantity.si();
    }

    static double between(String option, Quantity quantity, Quantity lowest, Quantity highest) {
        if (!(quantity.si() >= lowest.si() && quantity.si() <= highest.si())) {
            throw new Failures.BadInputException(option + " is " + quantity + "; " + lowest + " to " + highest + " is accepted");
        }
        return quantity.si();
    }
}
