package org.roofspring.storage.system;

import java.util.Arrays;

/** What a system carries from one day to the next. */
final class SystemState {

    static final int NO_LOAD = -1;

    final long[] volume;
    int loadDueDay;

    SystemState(long[] volume, int loadDueDay) {
        this.volume = volume;
        this.loadDueDay = loadDueDay;
    }

    SystemState copy() {
        return new SystemState(volume.clone(), loadDueDay);
    }

    boolean same(SystemState other) {
        return loadDueDay == other.loadDueDay && Arrays.equals(volume, other.volume);
    }

    long total() {
        return Arrays.stream(volume).sum();
    }
}
