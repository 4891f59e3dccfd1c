/** Opens knowledge and rules together, from texts or from what the build worked out. */
package rungwise.start;
