/**
 * Plane geometry of lines and arcs: paths, offsets, hulls, section paths. All lengths in mm, angles
 * in radians, y up. Knows nothing of upholstery and uses no other package of the program.
 */
package padwright.geometry;
