/** Stages of building and options, from the site to findings. */
package org.roofspring.calc.standard.stages;
