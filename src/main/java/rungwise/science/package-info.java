/** Pure functions of chemistry, physics and decision, with units in their names and their published source beside them. */
package rungwise.science;
