/** What rules see of a method: on its surface, in the air and on the hands, and in its place in a ladder. */
package rungwise.rules.use;
