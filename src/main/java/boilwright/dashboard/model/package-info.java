/**
 * What drawing, band and charts show of a run: one axis of time, the moment at any point of it, and the colours of
 * temperatures. Holds no control and draws nothing; may use answers' and thermal's results and JavaFX's colour only.
 */
package boilwright.dashboard.model;
