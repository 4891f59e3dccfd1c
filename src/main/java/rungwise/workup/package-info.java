/** What is worked out for a situation by science: air, gloves, wet time, rinsing, mixing, chances by chemistry. */
package rungwise.workup;
