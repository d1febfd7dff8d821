/**
 * What materials give off into a vacuum and let through: the records of fluid-data/materials and their reader. No geometry and
 * no rig belongs here. May use units, errors and the relation of gas flow that carries a rate through time.
 */
package boilwright.outgassing;
