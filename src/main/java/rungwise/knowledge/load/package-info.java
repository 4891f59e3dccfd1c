/** Reads files, holds them against their schemas and the checks, and makes a knowledge base of them, all or nothing. */
package rungwise.knowledge.load;
