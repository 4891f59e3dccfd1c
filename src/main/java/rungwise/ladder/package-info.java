/** The main job: a spot goes in, the gentlest method still worth trying comes out, with reasons. */
package rungwise.ladder;
