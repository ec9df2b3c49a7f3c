package io.github.leafproof.dsl.formula;

import java.util.List;
import java.util.function.IntConsumer;

/** Yields a value from the slots of a frame. Immutable, and safe to share between threads. */
public interface Formula {

    /** The value in this frame. A lack of something needed yields {@link Value.Missing}, never an exception. */
    Value value(Frame frame);

    /** As a reader would write it, loops written out: {@code lash[intake]}, {@code (a + b) / 2}. */
    String words();

    /** The formulas it is made of. */
    List<Formula> parts();

    /** Tells every slot that the value depends on, each as often as it is read. */
    default void slots(IntConsumer reader) {
        parts().forEach(part -> part.slots(reader));
    }

    /** Adds what this has to say once judged. A plain yes or no says its name and its value. */
    default void account(Frame frame, Account account) {
        account.requires(words());
        account.measures(this, frame);
    }
}
