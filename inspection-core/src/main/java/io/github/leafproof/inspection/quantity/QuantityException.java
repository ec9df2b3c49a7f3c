package io.github.leafproof.inspection.quantity;

/**
 * Text that is no quantity, or a quantity that cannot be what is asked of it.
 *
 * <p>The message says what is wrong and {@link #remedy()} what to write instead, both in the words of the person who
 * wrote the text. Whoever reads files catches this and reports it with the place.
 */
public final class QuantityException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String problem;
    private final String remedy;

    /**
     * A complaint about a quantity.
     *
     * @param problem what is wrong, for example {@code "xx" is no unit}
     * @param remedy what to do about it, for example {@code did you mean mm?}
     */
    public QuantityException(String problem, String remedy) {
        super(problem);
        this.problem = problem;
        this.remedy = remedy;
    }

    /** What is wrong; the message, and never null. */
    public String problem() {
        return problem;
    }

    /** What to write instead, as a sentence without a full stop. */
    public String remedy() {
        return remedy;
    }
}
