/** What is it? Signs go in; what it may be, the best next harmless check and one ladder over all of it come out. */
package rungwise.diagnosis;
