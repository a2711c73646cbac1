/** Helpers shared inside this kernel; not API. */
package org.roofspring.economy.internal;
