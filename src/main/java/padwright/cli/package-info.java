/**
 * The command line: one class a command, tables for people and JSON for programs. Uses every other
 * package; no other package uses it.
 */
package padwright.cli;
