/** Tests of what is typed and shown. */
package org.roofspring.ui.tests.field;
