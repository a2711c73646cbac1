/** Numerical parts of the drainage kernel; not API. */
package org.roofspring.drainage.internal;
