/** API calls that compute geometry from a side view sent along; nothing is kept. */
@NullMarked
package studio.stancebook.geometry.web;

import org.jspecify.annotations.NullMarked;
