package org.roofspring.kernel.testkit;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Assertions;

/**
 * Feeds a reader with damaged files. Each is read, or refused by the reader's own exception with one sentence that
 * begins with the name of the file; soon, and with bounded memory.
 *
 * <p>Without further notice the files are the same at every run. With the system property
 * {@code roofspring.fuzz.seconds} they are new each time, for so long;
 * {@code roofspring.fuzz.seed} does again what a run has printed.
 */
public final class Fuzz {
    private static final int TRIES = 1500;
    private static final Duration LONGEST_RUN = Duration.ofSeconds(6);
    private static final Duration LONGEST_READ = Duration.ofSeconds(20);
    private static final long MOST_BYTES = 500_000_000;

    /** Reads a file that may be anything. */
    public interface Reader {
        void read(byte[] content) throws Exception;
    }

    private final String name;
    private final Class<? extends Exception> refusal;
    private final Reader reader;

    /**
     * @param name    the name of the file that the reader is told, with which each of its messages begins
     * @param refusal the one exception that the reader may throw
     */
    public Fuzz(String name, Class<? extends Exception> refusal, Reader reader) {
        this.name = name;
        this.refusal = refusal;
        this.reader = reader;
    }

    /** Damages the files again and again. */
    public void run(List<byte[]> corpus) {
        int seconds = Integer.getInteger("roofspring.fuzz.seconds", 0);
        long seed = Long.getLong("roofspring.fuzz.seed", seconds > 0 ? new Random().nextLong() : 1);
        long end = System.nanoTime() + (seconds > 0 ? Duration.ofSeconds(seconds) : LONGEST_RUN).toNanos();
        int refused = 0;
        int tries = 0;
        while (System.nanoTime() < end && (seconds > 0 || tries < TRIES)) {
            refused += tryOnce(corpus, seed + tries) ? 0 : 1;
            tries++;
        }
        System.out.println("fuzz " + refusal.getSimpleName() + ": seed " + seed + ", " + tries + " files, " + refused
                + " refused, " + (tries - refused) + " read");
        Assertions.assertTrue(refused > tries / 20 && refused < tries, "the damage is too great or too small");
    }

    private boolean tryOnce(List<byte[]> corpus, long seed) {
        byte[] content = new Mutator(seed).mutate(corpus);
        var memory = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        return Assertions.assertTimeoutPreemptively(LONGEST_READ, () -> {
            long before = memory.getCurrentThreadAllocatedBytes();
            boolean read = reads(content, seed);
            long took = memory.getCurrentThreadAllocatedBytes() - before;
            Assertions.assertTrue(took < MOST_BYTES, () -> "-Droofspring.fuzz.seed=" + seed + ": " + content.length
                    + " bytes took " + took + " bytes of memory");
            return read;
        }, () -> "-Droofspring.fuzz.seed=" + seed + ": the reader did not return");
    }

    private boolean reads(byte[] content, long seed) {
        try {
            reader.read(content);
            return true;
        } catch (Exception e) {
            String message = String.valueOf(e.getMessage());
            if (!refusal.isInstance(e) || !message.startsWith(name) || message.lines().count() != 1
                    || message.length() > 2000) {
                throw new AssertionError("-Droofspring.fuzz.seed=" + seed + ": " + e, e);
            }
            return false;
        }
    }
}
