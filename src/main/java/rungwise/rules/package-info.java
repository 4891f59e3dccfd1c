/** Compiles and runs the rules in {@code rules/}, and builds the because of every conclusion; the only package that sees the engine. */
package rungwise.rules;
