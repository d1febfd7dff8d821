package boilwright.estimate;

/**
 * One field that was guessed.
 *
 * @param path path of the field, with the numbers of list entries
 * @param basis what the guess rests on, a whole sentence
 */
public record Guess(String path, String basis) {}
