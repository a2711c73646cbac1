/** How site files are checked, migrated, read and written. Not API. */
package org.roofspring.site.internal.io;
