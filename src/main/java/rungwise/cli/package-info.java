/** Commands. */
package rungwise.cli;
