/**
 * What the command line and the workbench both hand out: a part's figures as tables, findings as
 * sentences, the files of a job in a folder that is whole or untouched.
 */
package padwright.output;
