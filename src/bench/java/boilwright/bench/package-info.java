/**
 * Measurements of how long answers take, run by {@code mvn -Pbench verify}. No judging here: the bars and the measured
 * figures stand in docs/performance.md. May use everything but commandline.
 */
package boilwright.bench;
