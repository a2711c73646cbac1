/**
 * Daily balance of a whole storage system: several tanks, losses, uses with priorities and rationing, water bought in,
 * and accidents as what-ifs. Volumes are whole microlitres, as in {@link org.roofspring.storage}.
 *
 * <h2>Stages and tanks</h2>
 *
 * <p>A system is a chain of stages. A stage is one tank, or several joined at one level, which then fill and empty
 * together in proportion to their capacity. A transfer (a pump or a pipe) carries water from each stage to the next.
 *
 * <h2>The order of a day</h2>
 * <ol>
 * <li>Accidents: a tank is shut off, dumped, or broken.</li>
 * <li>A load of water that is due arrives, as far as it fits.</li>
 * <li>Evaporation and leakage are taken from what is in store.</li>
 * <li>Each use, by priority, asks for its ration: from its own stage down to its outlet, then through the transfers
 * from the stages before. What it may count on is the volume plus theta of the stage's own inflow.</li>
 * <li>Stage by stage: theta of the yield is drawn, the inflow comes in, what is above the capacity flows over (to the
 * next stage, or away), the rest of the yield is drawn.</li>
 * <li>With what is left of the day's transfers, later stages are filled up.</li>
 * <li>A load is ordered when little is left.</li>
 * </ol>
 * With one tank and none of the extras this is exactly {@link org.roofspring.storage.TankBalance}.
 */
package org.roofspring.storage.system;
