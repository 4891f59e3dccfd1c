/** What can be wrong only when all entries are seen together: one check, one purpose. */
package rungwise.knowledge.check;
