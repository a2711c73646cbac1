/** The command line as its users and their scripts see it: arguments in, output and exit status out. */
package org.roofspring.cli.tests;
