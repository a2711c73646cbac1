/** What storage does, in pictures and tables: shortage by month, how much tank, days ahead. */
package org.roofspring.ui.parts.storage;
