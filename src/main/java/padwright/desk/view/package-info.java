/**
 * Where things lie in the views of the workbench: what is shown, what was clicked, what a drag
 * means. No window.
 */
package padwright.desk.view;
