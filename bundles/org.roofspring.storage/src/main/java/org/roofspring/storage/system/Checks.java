package org.roofspring.storage.system;

/** Checks of arguments that several records share. */
final class Checks {

    private Checks() {
    }

    static void ratio(double value, String name) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(name + " is " + value + "; accepted is 0 to 1");
        }
    }

    static void index(int value, int size, String name) {
        if (value < 0 || value >= size) {
            throw new IllegalArgumentException(name + " is " + value + "; accepted is 0 to " + (size - 1));
        }
    }

    static void days(int value, int least, String name) {
        if (value < least) {
            throw new IllegalArgumentException(name + " is " + value + "; accepted is " + least + " or more");
        }
    }
}
