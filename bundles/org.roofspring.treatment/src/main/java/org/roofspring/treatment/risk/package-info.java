/**
 * Microbial risk: dose response, the chain from raw water to illness and disease burden, forward and back, and the same
 * with uncertain inputs.
 *
 * <p>No published concentration of pathogens in roof water was found, so the raw concentration is always the user's
 * assumption, and the result is only as good as it is.
 */
package org.roofspring.treatment.risk;
