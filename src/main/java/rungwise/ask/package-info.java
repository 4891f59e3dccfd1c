/** A talk at the vehicle: one question at a time, until nothing that may still be asked would change the next step. */
package rungwise.ask;
