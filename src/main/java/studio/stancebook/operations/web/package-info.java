/** Calls and pages for whoever keeps a studio. */
@NullMarked
package studio.stancebook.operations.web;

import org.jspecify.annotations.NullMarked;
