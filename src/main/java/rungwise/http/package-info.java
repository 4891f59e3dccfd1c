/** The JSON API. */
package rungwise.http;
