/** Charts of classes: two measures against each other, and one measure in every segment, with the proposals in them. */
@NullMarked
package studio.stancebook.proposal.chart;

import org.jspecify.annotations.NullMarked;
