/** Attempts that happened and the spots they were made on, kept so that none is lost, and what they teach. The only package that sees a database. */
package rungwise.shoplog;
