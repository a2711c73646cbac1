/**
 * The model of a rainwater site (generated from {@code model/site.ecore}): make objects with
 * {@link org.roofspring.site.SiteFactory}, read and write files with {@link org.roofspring.site.io.SiteFiles}.
 *
 * <p>A value that carries a dimension is a {@link org.roofspring.quantity.Quantity} and null where it was not given;
 * what then holds, the range and the source of a default are in
 * {@link org.roofspring.site.meta.FeatureFacts}. Objects are touched on one thread only; other threads read a
 * {@link org.roofspring.site.snapshot.SiteSnapshot}.
 */
package org.roofspring.site;
