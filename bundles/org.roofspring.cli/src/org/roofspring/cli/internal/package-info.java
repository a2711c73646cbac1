/** The commands, their options and how their answers are written. */
package org.roofspring.cli.internal;
