/** Compiles and runs the rules in {@code rules/}, and gives every conclusion its because; the only package that sees the engine. */
package rungwise.rules;
