/** What is known: contaminants, surfaces, agents, tools, methods and their sources, as immutable records read from YAML. */
package rungwise.knowledge;
