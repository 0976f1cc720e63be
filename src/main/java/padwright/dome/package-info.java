/**
 * The domed top of a pad as a surface in space: its mesh, laid flat, with the strain that leaves in
 * the covering, where a seam would relieve it, and whether the flat lies within the cover.
 */
package padwright.dome;
