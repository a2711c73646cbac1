/**
 * What the record says about the years to come: how sure a reliability is, how long today's water lasts, which ration
 * keeps the risk under a limit, and the tables to paint on a tank.
 */
package org.roofspring.storage.outlook;
