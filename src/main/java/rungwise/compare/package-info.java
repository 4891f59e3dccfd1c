/** Two answers side by side, and what an answer would be if a fact were otherwise. */
package rungwise.compare;
