/** What a reviewer's decision rests on, and whether it still stands. */
package org.roofspring.calc.standard.review;
