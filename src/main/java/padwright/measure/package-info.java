/** Lengths: parsing and printing of mm and fractional inches, tolerances. Uses no other package. */
package padwright.measure;
