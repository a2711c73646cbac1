/**
 * The editor of treatment trains: each train as a row of steps from its tank to its uses, what is taken out behind each
 * step against what is asked for, and the work it asks for each week.
 */
package org.roofspring.ui.treatment;
