/** The calls and pages by which packages are brought in and taken out. */
@NullMarked
package studio.stancebook.exchange.web;

import org.jspecify.annotations.NullMarked;
