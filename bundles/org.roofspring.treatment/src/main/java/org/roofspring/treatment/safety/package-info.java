/**
 * From a train to a plain verdict for a use: targets, chemical hazards, ways in for viruses, water tests, the sanitary
 * inspection and the water safety plan.
 *
 * <p>A verdict always names its conditions, and always asks to test the water and to follow the local authority.
 */
package org.roofspring.treatment.safety;
