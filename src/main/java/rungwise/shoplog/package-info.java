/** Attempts that happened, kept so that none is lost, and what they teach. The only package that sees a database. */
package rungwise.shoplog;
