/**
 * The pages of the window: what a person edits and reads beside the drawing. A page shows what the session and the answer hold
 * and hands edits to the session; it computes nothing. May use every part of the window below it, not its frame.
 */
package boilwright.dashboard.pages;
