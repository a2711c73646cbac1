package org.roofspring.calc.engine;

import java.util.Objects;

/**
 * What went wrong inside a plug-in. The rest of the site still computes.
 *
 * @param calculationId which calculation
 * @param provider      the bundle it comes from
 * @param text          one sentence for people
 * @param cause         for the log, or null
 */
public record PluginFault(String calculationId, String provider, String text, Throwable cause) {
    public PluginFault {
        Objects.requireNonNull(calculationId);
        Objects.requireNonNull(provider);
        Objects.requireNonNull(text);
    }
}
