/** In which order to build, and what a budget buys: exact over the small sets of stages that occur. */
package org.roofspring.economy.stages;
