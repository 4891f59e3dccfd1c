/** What rules conclude, and the because of it. */
package rungwise.rules.said;
