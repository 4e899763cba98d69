/** Calls and pages for whoever keeps a studio. */
@NullMarked
package studio.stancebook.upkeep.web;

import org.jspecify.annotations.NullMarked;
