/** What a shop lays over the knowledge: its own products, and narrower limits. */
package rungwise.knowledge.overlay;
