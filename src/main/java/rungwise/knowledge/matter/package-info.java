/** What deposits are made of, and how a method takes it. */
package rungwise.knowledge.matter;
