/**
 * The job file: reads and writes JSON as {@code docs/job.md} describes it, saves it safely, and
 * starts a job from a ready-made part. The trees are walked by hand, so that every refusal names
 * its place and nothing is bound by reflection at start-up. Uses {@code measure}, {@code json},
 * {@code material} and {@code design} only; knows nothing of how a part is worked out.
 */
package padwright.jobfile;
