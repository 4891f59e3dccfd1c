/** What rules see of a spot, whatever the method: deposit, surface, panel, air, people, and what was tried. */
package rungwise.rules.fact;
