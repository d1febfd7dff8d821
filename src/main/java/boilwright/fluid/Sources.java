package boilwright.fluid;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The citations of a BibTeX file in the plain form that fluid-data keeps to: one field on each line, values in braces.
 */
public final class Sources {
    private static final Pattern ENTRY = Pattern.compile("@\\w+\\{([^,\\s]+),(.*?)\\n\\}", Pattern.DOTALL);
    private static final Pattern FIELD = Pattern.compile("^\\s*(\\w+)\\s*=\\s*\\{(.*)\\},?\\s*$", Pattern.MULTILINE);

    private final Map<String, String> citations;

    private Sources(Map<String, String> citations) {
        this.citations = citations;
    }

    /** Reads the text of such a file. */
    public static Sources parse(String bib) {
        Map<String, String> citations = new LinkedHashMap<>();
        Matcher entry = ENTRY.matcher(bib);
        while (entry.find()) {
            Map<String, String> fields = new LinkedHashMap<>();
            Matcher field = FIELD.matcher(entry.group(2));
            while (field.find()) {
                fields.put(field.group(1), field.group(2));
            }
            citations.put(
                    entry.group(1),
                    Stream.of("author", "title", "journal", "booktitle", "publisher", "year", "note")
                            .map(fields::get)
                            .filter(text -> text != null)
                            .collect(Collectors.joining(", ")));
        }
        return new Sources(citations);
    }

    /** The citation of a key; a text that is no key is itself the citation. */
    public String citation(String source) {
        return citations.getOrDefault(source, source);
    }
}
