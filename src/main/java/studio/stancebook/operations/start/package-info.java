/** What is looked at before the server starts, and how a start that failed is told. */
@NullMarked
package studio.stancebook.operations.start;

import org.jspecify.annotations.NullMarked;
