package longnight.cli;

/** How a run ended, as the shell sees it. These numbers are a contract with scripts. */
final class ExitCode {
    /** The question was answered. */
    static final int FINE = 0;
    /** The run could not be finished, for a reason outside the engine: a file that cannot be written, say. */
    static final int FAILED = 1;
    /** What we were given is at fault: the command line or an input file. */
    static final int BAD_INPUT = 2;
    /** The engine is at fault. */
    static final int OUR_FAULT = 70;

    private ExitCode() {}
}
