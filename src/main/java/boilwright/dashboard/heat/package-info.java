/**
 * The choice of a heat source on the Heat page: sources side by side, what each delivers against what the pump takes, the powers
 * that work, and how sure that is. Uses the charts and the general parts of pages; no physics belongs here.
 */
package boilwright.dashboard.heat;
