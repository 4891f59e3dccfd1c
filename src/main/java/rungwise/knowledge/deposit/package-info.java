/** What is stuck, how it holds, and the signs by which it is known. */
package rungwise.knowledge.deposit;
