/**
 * The words of the window: one bundle, and the way from a message about a file to one about a form. Knows no control; may use
 * rig and errors.
 */
package boilwright.dashboard.text;
