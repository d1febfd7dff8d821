package boilwright.errors;

import java.util.List;
import java.util.stream.Collectors;

/** Input that was not accepted: every fault found, in the order found. Nothing was computed or written. */
public class InputRefusedException extends RuntimeException {
    private final transient List<Message> faults;

    /** @param faults at least one */
    public InputRefusedException(List<Message> faults) {
        super(faults.stream().map(Message::text).collect(Collectors.joining(System.lineSeparator())));
        if (faults.isEmpty()) {
            throw new IllegalArgumentException("a refusal names at least one fault");
        }
        this.faults = List.copyOf(faults);
    }

    /** A refusal for one fault. */
    public InputRefusedException(Message fault) {
        this(List.of(fault));
    }

    /** Every fault found, in the order found. */
    public List<Message> faults() {
        return faults;
    }
}
