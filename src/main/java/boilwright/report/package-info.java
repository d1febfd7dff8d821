/**
 * Answers as people and other programs read them: text, JSON, time series as CSV, pictures. Nothing is computed or judged
 * here and no file is opened: each class turns one answer into text or bytes. May use spread, answers, estimate, thermal, rise, rig, fluid,
 * units, files and errors.
 */
package boilwright.report;
