/** A spot that is worked on from the first question to the last try: nothing is told twice. */
package rungwise.spot;
