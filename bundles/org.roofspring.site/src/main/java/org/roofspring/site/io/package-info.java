/**
 * Reading and writing site files ({@code *.site}, XMI). A file is read only when all of it is understood, and written
 * whole or not at all; every refusal is one sentence.
 */
package org.roofspring.site.io;
