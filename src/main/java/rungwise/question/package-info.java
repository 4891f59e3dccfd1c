/** The question and its reader: what is asked of a ladder, and what is wrong with how it was asked. */
package rungwise.question;
