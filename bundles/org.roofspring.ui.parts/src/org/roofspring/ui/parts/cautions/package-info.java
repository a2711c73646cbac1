/** What the reader must know before acting on an answer. */
package org.roofspring.ui.parts.cautions;
