/** The calculations that come with Roofspring; they have no privilege over a third party's. */
package org.roofspring.calc.standard;
