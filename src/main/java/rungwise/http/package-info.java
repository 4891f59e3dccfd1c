/** The service over HTTP: asks the advisor, shows what is known, and says in problem+json what went wrong. */
package rungwise.http;
