/** What parts that show the active session have in common. */
package org.roofspring.ui.part;
