/** The figures at which something is decided, and what counts where nobody told. */
package rungwise.knowledge.decision;
