package org.roofspring.rain;

import java.time.LocalDate;

/** Rain of one day [mm]. */
public record DayDepth(LocalDate date, double depthMm) {
}
