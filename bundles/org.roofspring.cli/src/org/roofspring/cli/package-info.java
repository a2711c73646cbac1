/** Everything Roofspring can answer without a screen, as commands. */
package org.roofspring.cli;
