/** The answer and its writer: what a ladder says to a person or a program. */
package rungwise.answer;
