/**
 * What things are called: a word of the trade read as an entry, a plain age read as a duration, and what is nearest where
 * nothing is called so.
 */
package rungwise.names;
