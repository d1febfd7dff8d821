package boilwright.units;

import boilwright.errors.Message;
import java.util.Objects;
import java.util.Optional;

/** What came of reading one quantity: a value, or one fault in words. */
public sealed interface Reading {
    /**
     * A quantity that was understood.
     *
     * @param si value in the SI unit of the dimension asked for, finite
     * @param unit the unit it was written in
     */
    record Read(double si, UnitSpelling unit) implements Reading {}

    /**
     * A quantity that was not accepted.
     *
     * @param fault what was found, what is accepted, and the likely meaning where there is one
     * @param asWritten for a likely slip only: the quantity taken literally, for a user who says that it is meant so
     */
    record Refused(Message fault, Optional<Read> asWritten) implements Reading {
        public Refused {
            Objects.requireNonNull(fault);
            Objects.requireNonNull(asWritten);
        }

        /** A text that has no literal meaning to fall back on. */
        public Refused(Message fault) {
            this(fault, Optional.empty());
        }
    }
}
