/** What harms whoever works, and what keeps it off: limits of the air, respirators, gloves, hazard statements. */
package rungwise.knowledge.safety;
