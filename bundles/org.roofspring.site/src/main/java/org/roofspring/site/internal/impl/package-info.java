/** Generated classes behind the interfaces of the model. Not API. */
package org.roofspring.site.internal.impl;
