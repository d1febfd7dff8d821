/**
 * The rig that a person works on: the immutable rig and its edits, what the file on the disk holds, the copy kept against a
 * crash, and the few things remembered from one day to the next. Knows no control of a window; may use rig, rig.file, files
 * and what they stand on.
 */
package boilwright.dashboard.session;
