/**
 * Surfaces as triangle meshes: their topology and curvature, meshing of a surface over a closed
 * outline, and flattening with as little stretch as can be. All lengths in mm, angles in radians.
 * Uses plane geometry and, in one class, the sparse Cholesky factorisation of EJML; no other
 * package of the program.
 */
package padwright.geometry.mesh;
