/** Life-cycle cost and other supplies, from the site to findings. */
package org.roofspring.calc.standard.economy;
