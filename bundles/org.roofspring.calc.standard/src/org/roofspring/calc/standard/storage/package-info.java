/** Findings of the calculations of storage: sizing, outlook, accidents, and the overhead tank within the day. */
package org.roofspring.calc.standard.storage;
