/** What the model says about its own features: meaning, dimension, range, default and the source of the default. */
package org.roofspring.site.meta;
