/** How a finding comes about: formula, inputs, substitution, result and source, step by step. */
package org.roofspring.ui.parts.workings;
