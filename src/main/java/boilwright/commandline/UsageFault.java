package boilwright.commandline;

import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.units.NearestSpelling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what was wrong with a command line. */
final class UsageFault {
    private UsageFault() {}

    static Message message(ParameterException refusal) {
        CommandSpec spec = refusal.getCommandLine().getCommandSpec();
        String help = spec.qualifiedName();
        if (refusal instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            String found = unmatched.getUnmatched().get(0).replaceAll("\\p{Cntrl}", "?");
            String word = found.contains("=") ? found.substring(0, found.indexOf('=')) : found;
            Optional<String> near = NearestSpelling.of(word, words(refusal.getCommandLine()));
            return near.isPresent()
                    ? Message.of(MessageKey.ARGUMENT_UNKNOWN_NEAR, found, near.get(), help)
                    : Message.of(MessageKey.ARGUMENT_UNKNOWN, found, help);
        }
        String sentence = refusal.getMessage().replaceAll("\\p{Cntrl}", " ").replaceAll("[.\\s]*$", "") + ".";
        return Message.of(MessageKey.USAGE_REFUSED, sentence, help);
    }

    /** What may stand on a command's line besides values. */
    private static List<String> words(CommandLine command) {
        List<String> words = new ArrayList<>(command.getSubcommands().keySet());
        words.addAll(command.getCommandSpec().optionsMap().keySet());
        return words;
    }
}
