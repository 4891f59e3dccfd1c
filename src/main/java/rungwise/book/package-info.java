/** Writes knowledge and rules as a book of static pages, to read on a phone or on paper. */
package rungwise.book;
