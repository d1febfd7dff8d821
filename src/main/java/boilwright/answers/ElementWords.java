package boilwright.answers;

import boilwright.rig.Cooling;
import boilwright.rig.ElementKind;

/** What an element of the circuit is called. */
final class ElementWords {
    private ElementWords() {}

    /** Its own name, or its kind with the stages that it covers; with its branch where there are several. */
    static String name(Cooling.Element element) {
        String name = element.place().name();
        if (name.isEmpty()) {
            name = ElementKind.of(element).id().replace('-', ' ');
            if (element instanceof Cooling.Jacket jacket) {
                name += " " + String.join(", ", jacket.covers());
            } else if (element instanceof Cooling.SolderedCoil coil) {
                name += " " + String.join(", ", coil.covers());
            }
        }
        String branch = element.place().branch();
        return branch.isEmpty() ? name : branch + ": " + name;
    }
}
