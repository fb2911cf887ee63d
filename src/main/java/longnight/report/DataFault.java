package longnight.report;

/** A file of ours that is not as it was written, or does not belong to what it is offered for. The person who offered it can mend it. */
public final class DataFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    DataFault(String message) {
        super(message);
    }
}
