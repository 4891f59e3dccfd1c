/** Faults of the base that only the engine shows: it is asked for reference ladders, and its answers are looked at. */
package rungwise.lint;
