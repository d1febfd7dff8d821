/**
 * How sure an answer is: the uncertain inputs of a rig are drawn many times over their ranges, each draw is asked as a question of {@code
 * answers}, and bands, chances and what to measure first come out. No physics and no judgement of a single answer belongs here. May
 * use answers, estimate, rig, rig.file, fluid, numerics, units, files and errors.
 */
package boilwright.spread;
