package boilwright.dashboard.pages;

import boilwright.dashboard.text.WindowText;
import boilwright.rig.SourceKind;

/** What the words that a rig file chooses from are called in the window. */
final class ChoiceWords {
    private ChoiceWords() {}

    /** What a word of a rig file is called. */
    static String of(String id) {
        return SourceKind.find(id).map(SourceKind::title).orElseGet(() -> WindowText.say("pages.choice." + id));
    }
}
