/** What labels and data sheets of products say, in words that the knowledge reads. */
package rungwise.knowledge.product;
