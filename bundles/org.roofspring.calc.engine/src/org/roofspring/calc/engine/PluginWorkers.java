package org.roofspring.calc.engine;

import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/**
 * Runs plug-in code on threads that can be left behind. Java cannot stop a thread, so one that does not come back is
 * abandoned: its thread is a daemon and dies with the process.
 */
final class PluginWorkers {
    /** How long a plug-in may take to notice that it was cancelled. */
    private static final long CANCEL_GRACE_MS = 2000;
    private static final long POLL_MS = 20;

    private final AtomicInteger count = new AtomicInteger();
    private final ExecutorService threads = Executors.newCachedThreadPool(task -> {
        Thread thread = new Thread(task, "roofspring-calculation-" + count.incrementAndGet());
        thread.setDaemon(true);
        return thread;
    });

    /** The plug-in did not come back in time and was left behind. */
    static final class AbandonedException extends Exception {
        private static final long serialVersionUID = 1L;

        AbandonedException(String message) {
            super(message);
        }
    }

    /**
     * Runs a task and waits for it.
     *
     * @throws CancellationException when {@code cancelled} turned true and the task stopped in time
     * @throws AbandonedException    when the deadline passed, or it ignored being cancelled
     * @throws ExecutionException    when the task threw
     */
    <T> T run(Callable<T> task, int deadlineS, BooleanSupplier cancelled) throws ExecutionException, AbandonedException {
        Future<T> future = threads.submit(task);
        long start = System.nanoTime();
        long cancelledAt = 0;
        while (true) {
            try {
                T value = future.get(POLL_MS, TimeUnit.MILLISECONDS);
                return value;
            } catch (TimeoutException e) {
                long now = System.nanoTime();
                if (now - start > TimeUnit.SECONDS.toNanos(deadlineS)) {
                    throw new AbandonedException("did not come back within " + deadlineS + " s");
                }
                if (cancelledAt == 0 && cancelled.getAsBoolean()) {
                    cancelledAt = now;
                } else if (cancelledAt != 0 && now - cancelledAt > TimeUnit.MILLISECONDS.toNanos(CANCEL_GRACE_MS)) {
                    throw new AbandonedException("did not stop within " + CANCEL_GRACE_MS / 1000 + " s of being cancelled");
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new CancellationException("interrupted");
            } catch (ExecutionException e) {
                if (e.getCause() instanceof CancellationException stopped && cancelled.getAsBoolean()) {
                    throw stopped;
                }
                throw e;
            }
        }
    }
}
