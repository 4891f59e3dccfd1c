/** Entries as they stand in their files, before they are known to be free of faults; an overlay file is one of them. */
package rungwise.knowledge.draft;
