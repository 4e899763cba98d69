/** The page and the API calls of underlays. */
@NullMarked
package studio.stancebook.underlay.web;

import org.jspecify.annotations.NullMarked;
