/** The last steps into the tank and around it: first flush, screens, inlet, intake, overflow and vent. */
package org.roofspring.drainage.tank;
