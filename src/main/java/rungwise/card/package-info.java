/** What a card says in its own words: what comes first, how long it stays on, what is kept off. */
package rungwise.card;
