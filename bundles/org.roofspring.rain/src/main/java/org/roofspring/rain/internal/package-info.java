/** Parsers of rain files and the checks behind the quality report; not API. */
package org.roofspring.rain.internal;
