/** Argument checks and numerical methods shared by the packages of this kernel; not for use outside it. */
package org.roofspring.hydraulics.internal;
