/**
 * Choosing what heats a pump and what it is charged with: how much is enough, several sources or fluids side by side on one
 * rig, gas and its dangers. Each question is answered by one immutable value. May use answers and what stands below it; reads
 * no files, prints and draws nothing.
 */
package boilwright.choice;
