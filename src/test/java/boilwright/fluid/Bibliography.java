package boilwright.fluid;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** What a file of citations holds, read without {@link Sources}. */
public final class Bibliography {
    private static final Pattern ENTRY = Pattern.compile("(?m)^@\\w+\\{([^,\\s]+),");

    private Bibliography() {}

    /** The keys of all entries, in their order. */
    public static List<String> keys(String bib) {
        return ENTRY.matcher(bib)
                .results()
                .map((MatchResult entry) -> entry.group(1))
                .toList();
    }
}
