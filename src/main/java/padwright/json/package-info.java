/**
 * JSON read strictly: every value knows its line and its path, so that whatever reads a job file or
 * a catalogue can refuse one value with its place. Knows no field of any format. Uses {@code
 * padwright.measure} only.
 */
package padwright.json;
