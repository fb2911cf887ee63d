package longnight.report;

/** Sheets that printers hold. */
public enum Paper {
    /** 210 mm by 297 mm, ISO 216. */
    A4(595.276f, 841.89f),
    /** 8.5 in by 11 in, ANSI/ASME Y14.1. */
    LETTER(612, 792);

    /** In points of 1/72 in. */
    final float width;

    final float height;

    Paper(float width, float height) {
        this.width = width;
        this.height = height;
    }
}
