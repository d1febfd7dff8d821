/**
 * The gas of a rig: what gives it off, what each piece of the line costs, what the gauge should read, how the backing pump
 * holds the foreline and how pressures fall with time. Knows nothing of heat: what the jets do is told to it. May use the
 * relations of gas flow, the rig and the outgassing data.
 */
package boilwright.vacuum;
