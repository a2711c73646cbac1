/**
 * What the record says about the years to come: how sure a reliability is, how long today's water lasts, which ration
 * keeps the risk under a limit, and the tables to paint on a tank.
 *
 * <h2>The years of the record as the years that may come</h2>
 *
 * <p>From a date and a level, the weather of each year of the record is run forward from that date; demand follows the
 * calendar of the days to come. Where the record ends before the run does, the run goes on at the same day of the year
 * at the beginning of the record, and says so. The years are taken as equally likely: a change of climate is not in
 * them, nor is what the sky or a forecast says today.
 *
 * <h2>Running dry</h2>
 *
 * <p>A run is dry on the first day on which a use that is watched is not given all that it asks for. Up to that day
 * more water in store never makes it come sooner, as long as every use is watched, nothing is bought in and no
 * rationing rule acts. Where some uses are not watched it now and then does, since what those take hangs on the
 * levels too.
 */
package org.roofspring.storage.outlook;
