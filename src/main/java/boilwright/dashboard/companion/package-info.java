/**
 * The companion's window: a run beside its plan in type that is read from two metres, worked by keyboard, with alarms to see and
 * to hear. What happens is decided in boilwright.companion; here it is shown and its log kept. May use companion, sequence, units,
 * errors and the window's words; knows nothing of rigs' pages.
 */
package boilwright.dashboard.companion;
