/**
 * The part as a solid to look at: bodies of triangles from a result, a camera, and a picture
 * painted without a graphics card. No window.
 */
package padwright.desk.solid;
