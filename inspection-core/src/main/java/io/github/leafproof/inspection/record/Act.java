package io.github.leafproof.inspection.record;

import java.time.OffsetDateTime;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** One thing that was done while a sheet was filled in at the bench. A sheet shows what came of it, a journal every act. */
public sealed interface Act {

    /** Who did it and when. */
    Stamp stamp();

    /**
     * Who did something and when.
     *
     * @param by null where nobody said who
     */
    record Stamp(@Nullable String by, OffsetDateTime at) {}

    /**
     * The work was taken up, for the first time or again.
     *
     * @param process the number that the machine gave to the program that it is done with
     */
    record Opened(long process, Stamp stamp) implements Act {}

    /** Something was entered: observed, adjusted, corrected, or found not to be observable. */
    record Entered(Entry entry) implements Act {
        @Override
        public Stamp stamp() {
            return new Stamp(entry.by(), Objects.requireNonNull(entry.at(), "an act has its time"));
        }
    }

    /** A state of the bench was brought about: {@code covers} to {@code off}. */
    record Brought(String state, String to, Stamp stamp) implements Act {}

    /** An observation was passed over, and is not asked for again. */
    record Skipped(String observe, Stamp stamp) implements Act {}

    /** An observation was put off until nothing else is left. */
    record PutOff(String observe, Stamp stamp) implements Act {}

    /** The newest act that counted was taken back. */
    record TookBack(Stamp stamp) implements Act {}

    /**
     * The sheet was written as it stood.
     *
     * @param sha256 the SHA-256 digest of its bytes, 64 lower-case hexadecimal digits
     */
    record Finished(String sha256, Stamp stamp) implements Act {}
}
