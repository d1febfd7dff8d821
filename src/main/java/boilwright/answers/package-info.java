/**
 * Answers a person asks for, from the states and runs of the thermal model: the verdict, the margins with their limits,
 * the cautions. No physics is computed here beyond comparing. May use thermal and what it stands
 * on, and estimate for the guesses of a rig, and rise. Every question is a record that a {@link Model} is handed, from here and from
 * the packages above.
 */
package boilwright.answers;
