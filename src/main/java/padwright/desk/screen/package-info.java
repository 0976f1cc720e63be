/**
 * The workbench's window. Shows what the models hold and hands over what the maker does; nothing is
 * worked out here.
 */
package padwright.desk.screen;
