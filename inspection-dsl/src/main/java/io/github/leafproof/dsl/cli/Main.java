package io.github.leafproof.dsl.cli;

/** The command line's entry point, a stand-in until the commands are there. */
public final class Main {
    private Main() {}

    /**
     * Prints the version.
     *
     * @param arguments ignored so far
     */
    public static void main(String[] arguments) {
        System.out.println("leafproof " + Main.class.getPackage().getImplementationVersion());
    }
}
