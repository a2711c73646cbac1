/** Tests of sessions inside the framework. */
package org.roofspring.ui.tests.session;
