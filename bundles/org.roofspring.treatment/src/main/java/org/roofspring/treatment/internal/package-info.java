/** Helpers shared inside this kernel; not API. */
package org.roofspring.treatment.internal;
