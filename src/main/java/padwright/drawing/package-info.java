/**
 * Reads an outline that somebody has drawn, from an SVG or a DXF file, and reports what was read
 * and what was left. Such files come from anywhere: nothing in them is followed, run or fetched,
 * and every size has a named limit. Knows of outlines, not of pads. Uses measure, geometry and
 * design.
 */
package padwright.drawing;
