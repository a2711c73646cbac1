/** The rain that drives a site: read, mended, scaled to its place, put under stress, or invented where there is none. */
package org.roofspring.calc.standard.rain;
