/** How useful the answers are: held against what the trade does first, and against the ladders that it would write. */
package rungwise.practice;
