/**
 * Drawings at full size and the files they are written to. A {@link padwright.export.Drawing} is
 * composed once from a piece, a section or a corner; each writer draws that same drawing. Uses
 * every package but the command line.
 */
package padwright.export;
