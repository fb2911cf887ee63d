package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longnight.night.NightResult;
import longnight.study.Cloud;
import longnight.study.Driver;
import longnight.study.Indices;
import longnight.study.SpreadAnswer;
import longnight.study.SpreadAnswer.Quantity;

/** The page about how far an answer is open, on the terminal. */
public final class SpreadPage {
    /** Where a run stopped: what it would have come to is not told. */
    private static final String BEYOND = "?";

    private static final int NAME = 18;
    private static final int DRIVER = 42;
    private static final int CELL = 17;
    private static final int SHARE = 10;
    private static final int INDEX = 24;

    private final SpreadWording words;
    private final List<String> lines = new ArrayList<>();

    private SpreadPage(SpreadWording words) {
        this.words = words;
    }

    /** The whole page, lines ended by a line feed. */
    public static String page(SpreadAnswer answer, Units units) {
        SpreadPage page = new SpreadPage(new SpreadWording(answer, units));
        page.write();
        return Console.plain(String.join("\n", page.lines) + "\n");
    }

    private void write() {
        paragraph(words.who(), 0);
        paragraph(words.headline(), 0);
        paragraph(words.atRisk(), 0);
        paragraph(words.given(), 0);
        paragraph(words.worst(), 0);
        paragraph(words.most(), 0);
        lines.add("");
        bands();
        lines.add("");
        shares();
        lines.add("");
        drivers();
        lines.add("");
        words.notes().forEach(note -> paragraph(note, 2));
        paragraph(Prose.text("caution.heading") + ": " + String.join(" ", words.cautions()), 2);
    }

    private void paragraph(String text, int indent) {
        lines.addAll(Console.wrapped(text, indent));
    }

    // --- Bands ---

    private void bands() {
        Units units = words.units();
        paragraph(Prose.text("spread.bands"), 0);
        lines.add(name("")
                + cell(Prose.text("spread.head.shortfall", units.unit(Measure.HEAT)))
                + cell(Prose.text("spread.head.demand"))
                + cell(Prose.text("spread.head.deficit", units.unit(Measure.HEAT)))
                + cell(Prose.text("spread.head.core", units.unit(Measure.TEMPERATURE)))
                + cell(Prose.text("spread.head.draws")));
        bands(Prose.text("spread.side.given"), words.answer().given());
        bands(Prose.text("spread.side.worst", words.worstIs()), words.answer().worst());
    }

    private void bands(String heading, SpreadAnswer.Side side) {
        Units units = words.units();
        lines.add(heading);
        NightResult written = side.asWritten();
        boolean stops = Double.isInfinite(side.all().shortfallHeat().nominal());
        lines.add(name("  " + Prose.text("spread.written"))
                + cell(stops ? BEYOND : units.number(Measure.HEAT, written.shortfallHeat()))
                + cell(stops ? BEYOND : Figures.decimals(written.demand(), 2))
                + cell(stops ? BEYOND : units.deficitNumber(written.coreHeatDeficitDawn()))
                + cell(
                        stops
                                ? BEYOND
                                : units.number(
                                        Measure.TEMPERATURE,
                                        side.all().coreDawn().nominal())));
        for (Cloud cloud : side.clouds()) {
            lines.add(name("  " + words.cloud(cloud))
                    + cell(words.number(Measure.HEAT, cloud.shortfallHeat()))
                    + cell(words.demand(cloud.demand()))
                    + cell(words.deficit(cloud.deficitDawn()))
                    + cell(words.number(Measure.TEMPERATURE, cloud.coreDawn()))
                    + cell(cloud.draws() + (cloud.settled() ? "" : " " + Prose.text("spread.open.mark"))));
        }
    }

    // --- Lines crossed ---

    private void shares() {
        paragraph(
                Prose.text(
                        "spread.shares.heading",
                        words.units().deadBand(),
                        words.units().line(Measure.TEMPERATURE, 35),
                        words.units().line(Measure.TEMPERATURE, 32)),
                0);
        StringBuilder head = new StringBuilder(name(""));
        for (Cloud.Crossed line : Cloud.Crossed.values()) {
            head.append(right(Prose.text("spread.line." + line), SHARE));
        }
        lines.add(head.toString());
        shares(Prose.text("spread.side.given"), words.answer().given());
        shares(Prose.text("spread.side.worst", words.worstIs()), words.answer().worst());
    }

    private void shares(String heading, SpreadAnswer.Side side) {
        lines.add(heading);
        for (Cloud cloud : side.clouds()) {
            StringBuilder row = new StringBuilder(name("  " + words.cloud(cloud)));
            for (Cloud.Crossed line : Cloud.Crossed.values()) {
                row.append(right(SpreadWording.percent(cloud, line), SHARE));
            }
            lines.add(row.toString());
        }
    }

    // --- Drivers ---

    private void drivers() {
        paragraph(Prose.text("spread.drivers"), 0);
        lines.add(left("", DRIVER)
                + right(Prose.text("spread.head.first"), INDEX)
                + right(Prose.text("spread.head.total"), INDEX)
                + right(Prose.text("spread.head.total.demand"), INDEX));
        for (Driver driver : words.ranked()) {
            Indices.Index index = words.index(Quantity.SHORTFALL_HEAT, driver);
            lines.add(left("  " + SpreadWording.driver(driver), DRIVER)
                    + right(SpreadWording.estimate(index.first()), INDEX)
                    + right(SpreadWording.estimate(index.total()), INDEX)
                    + right(
                            SpreadWording.estimate(
                                    words.index(Quantity.DEMAND, driver).total()),
                            INDEX));
        }
        if (!words.little().isEmpty()) {
            paragraph(words.little(), 2);
        }
    }

    private static String name(String text) {
        return left(text, NAME);
    }

    private static String cell(String text) {
        return right(text, CELL);
    }

    private static String left(String text, int width) {
        return String.format(Locale.ROOT, "%-" + width + "s", text);
    }

    private static String right(String text, int width) {
        return String.format(Locale.ROOT, " %" + (width - 1) + "s", text);
    }
}
