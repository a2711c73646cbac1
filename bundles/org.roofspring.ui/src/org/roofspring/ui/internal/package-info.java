/** The workbench's window, menus and perspective. Not API. */
package org.roofspring.ui.internal;
