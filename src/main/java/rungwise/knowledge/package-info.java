/** What is known, whole and checked: the base that holds the records of the rooms below, read from YAML. */
package rungwise.knowledge;
