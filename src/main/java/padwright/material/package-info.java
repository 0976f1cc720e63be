/**
 * What a part is made of: boards, foams, waddings, coverings, staples, screws and papers, read from
 * the catalogue in {@code shared/} and a maker's own file, and the constants of the rules, each row
 * with its source. Uses {@code padwright.measure} and {@code padwright.json} only.
 */
package padwright.material;
