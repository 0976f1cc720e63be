/**
 * Drawings on paper: PDF pages at exact size, tiled over sheets or rolls, and the sheets that hang
 * on the bench. Content streams are written directly; one sheet unit is one true mm on the printed
 * paper. May use everything below it and {@code padwright.export}; only the command line uses it.
 */
package padwright.export.pdf;
