/** What any record may be written with: a basis, a range, hours, a word, figures and names as they are printed. */
package rungwise.knowledge.common;
