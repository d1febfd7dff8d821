package boilwright.answers;

import boilwright.rig.Cooling;

/** What an element of the circuit is called. */
final class ElementWords {
    private ElementWords() {}

    /** Its own name, or its kind with the stages that it covers; with its branch where there are several. */
    static String name(Cooling.Element element) {
        String name = element.place().name();
        if (name.isEmpty()) {
            name = element.kind().id().replace('-', ' ');
            if (!element.covers().isEmpty()) {
                name += " " + String.join(", ", element.covers());
            }
        }
        String branch = element.place().branch();
        return branch.isEmpty() ? name : branch + ": " + name;
    }
}
