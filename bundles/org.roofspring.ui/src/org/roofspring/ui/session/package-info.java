/**
 * Open sites: each session holds one site, its file, its edits and its results. All parts of the workbench show the
 * active session and share its one selection. Nothing here draws; everything here is called on the model thread, which
 * in the workbench is the display's.
 */
package org.roofspring.ui.session;
