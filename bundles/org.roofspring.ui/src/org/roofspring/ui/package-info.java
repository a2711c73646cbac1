/** Names that the parts and the workbench share. */
package org.roofspring.ui;
