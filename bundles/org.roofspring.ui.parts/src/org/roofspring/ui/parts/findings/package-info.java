/** The answers of all calculations, by calculation. */
package org.roofspring.ui.parts.findings;
