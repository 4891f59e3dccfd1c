/** What a deposit sticks to: kinds of surface, what they bear, and places on the vehicle. */
package rungwise.knowledge.surface;
