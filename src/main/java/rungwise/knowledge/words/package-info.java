/** The closed lists: what a question may say in a field, and what each word stands for. */
package rungwise.knowledge.words;
