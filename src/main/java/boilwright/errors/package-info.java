/**
 * Everything Boilwright can say when it refuses, warns or stops: one enum of message keys with typed parameters, and the
 * exceptions that carry them. The sentences live in the resource bundle {@code boilwright/text/messages.properties}.
 * Nothing here knows about rigs, fluids or screens, and it uses no other package of the project.
 */
package boilwright.errors;
