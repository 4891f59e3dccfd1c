/** Sentences a person reads, by id from message files, and the typed figures that stand in them. */
package rungwise.text;
