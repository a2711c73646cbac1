/** Generated switch and adapter factory over the classes of the model. */
package org.roofspring.site.util;
