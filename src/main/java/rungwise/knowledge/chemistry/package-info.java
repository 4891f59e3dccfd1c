/** Kinds of solvent, reactive groups, substances and the spheres by which materials dissolve. */
package rungwise.knowledge.chemistry;
