/**
 * Parts that more than one page shows: the verdict and the ledger of margins. Each shows what it is given and computes nothing.
 * May use answers and the window's text.
 */
package boilwright.dashboard.parts;
