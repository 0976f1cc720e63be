/**
 * What the workbench holds: the job being edited, its history, results as they come, findings,
 * files. No window.
 */
package padwright.desk.model;
