/**
 * The commands of a terminal: reads what was typed, has the question answered, prints or writes the report, and says with
 * the exit code how it went. Thin: no physics, no judging, no layout. The only package that may print or end the program.
 * May use report and all that it stands on.
 */
package boilwright.commandline;
