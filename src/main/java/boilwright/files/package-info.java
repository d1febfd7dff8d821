/**
 * Files as the program leaves them: written whole or not at all, the report of its own faults, and the stamp of its own build. Knows nothing of what the
 * files say. May use errors.
 */
package boilwright.files;
