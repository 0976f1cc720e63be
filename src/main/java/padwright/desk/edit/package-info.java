/**
 * Changes a job, one step at a time: fields by their place in the job file, lengths as a maker
 * types them, outlines by their points. No engine, no window.
 */
package padwright.desk.edit;
