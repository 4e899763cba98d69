/** The page of a comparison. */
@NullMarked
package studio.stancebook.compare.web;

import org.jspecify.annotations.NullMarked;
