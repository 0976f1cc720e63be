/** Finished pages as pictures made of dots. mm become dots here and nowhere else. */
package padwright.export.raster;
