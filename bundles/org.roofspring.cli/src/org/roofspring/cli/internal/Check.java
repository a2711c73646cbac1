package org.roofspring.cli.internal;

import org.roofspring.quantity.Quantity;

/** Range checks that name the option as it was typed. */
final class Check {
    private Check() {
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
