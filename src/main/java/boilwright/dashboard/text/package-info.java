/**
 * The words of the window: one bundle, the way from a message about a file to one about a form, and the measured type in which
 * canvases set them. Knows no control; may use
 * rig and errors.
 */
package boilwright.dashboard.text;
