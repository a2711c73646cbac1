/** Workings of the storage kernel that are no part of its API. */
package org.roofspring.storage.internal;
