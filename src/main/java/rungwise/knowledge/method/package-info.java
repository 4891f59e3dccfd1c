/** How a deposit is taken off: methods, with the agent and the tool of each, their grades, chances and gates. */
package rungwise.knowledge.method;
