/** Calls and pages of segments and benchmark packages. */
@NullMarked
package studio.stancebook.catalogue.web;

import org.jspecify.annotations.NullMarked;
