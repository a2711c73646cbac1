/** Work that keeps a system going: when it falls due by date, by season and by use. */
package org.roofspring.economy.upkeep;
