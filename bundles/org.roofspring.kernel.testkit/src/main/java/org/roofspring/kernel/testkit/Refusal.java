package org.roofspring.kernel.testkit;

/** Whether a kernel that does not answer says so in one sentence of its own. */
final class Refusal {
    private Refusal() {
    }

    /** What is wrong with the exception; null when it is a good refusal. */
    static String fault(Throwable thrown) {
        return fault(thrown, false);
    }

    /** @param index whether a whole number was tried, which may be a place in a list and be refused as Java does it */
    static String fault(Throwable thrown, boolean index) {
        String message = thrown.getMessage();
        String name = thrown.getClass().getName();
        boolean ours = name.startsWith("org.roofspring.") && thrown instanceof Exception;
        StackTraceElement[] trace = thrown.getStackTrace();
        boolean refused = thrown.getClass() == IllegalArgumentException.class && trace.length > 0
                && trace[0].getClassName().startsWith("org.roofspring.");
        boolean outside = index && thrown instanceof IndexOutOfBoundsException;
        if (!ours && !refused && !outside) {
            return "failed with " + thrown + at(trace);
        }
        if (message == null || message.isBlank() || message.lines().count() != 1) {
            return "refused without a sentence: " + thrown + at(trace);
        }
        return null;
    }

    private static String at(StackTraceElement[] trace) {
        for (StackTraceElement element : trace) {
            if (element.getClassName().startsWith("org.roofspring.")) {
                return " at " + element;
            }
        }
        return "";
    }
}
