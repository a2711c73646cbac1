/** Base class of the generated code and conversion of values to text. Not API. */
package org.roofspring.site.internal;
