package longnight.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import longnight.assumption.Guess;
import longnight.night.Verdict;
import longnight.night.Way;
import longnight.study.DesignNight;
import longnight.study.ExpectedCold;
import longnight.study.KitNight;
import longnight.study.RecordedNight;
import longnight.study.Winter;
import longnight.study.Winters;

/** The page of a station's record. */
public final class WintersPage {
    private static final int WORST = 5;
    private static final int NAMED = 8;

    private final Winters answer;
    private final Units units;

    WintersPage(Winters answer, Units units) {
        this.answer = answer;
        this.units = units;
    }

    /** The whole page, lines ended by a line feed. */
    public static String text(Winters answer, Units units) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : new WintersPage(answer, units).paragraphs()) {
            if (paragraph.startsWith(" ") || paragraph.isEmpty()) {
                lines.add(paragraph); // a row of a table
            } else {
                lines.addAll(Console.wrapped(paragraph, 2));
            }
        }
        String cautions = answer.cautions().stream()
                .map(caution -> Wording.shortText(caution, units))
                .collect(Collectors.joining(" "));
        lines.addAll(Console.wrapped(Prose.text("caution.heading") + ": " + cautions, 2));
        return Console.plain(String.join("\n", lines) + "\n");
    }

    /** Everything but the cautions. */
    List<String> paragraphs() {
        List<String> lines = new ArrayList<>();
        lines.add(about());
        lines.add(headline());
        if (answer.expected() != null) {
            expected(answer.expected(), lines);
        }
        leftOut(lines);
        lines.add("");
        designs(lines);
        if (answer.kit() != null) {
            lines.add("");
            kit(lines);
        }
        return lines;
    }

    /** Which record this is. */
    String about() {
        long complete = answer.winters().stream().filter(Winter::complete).count();
        Winter lowest = answer.lowest();
        String text = Prose.text(
                answer.typicalYear() ? "winters.about.typical" : "winters.about",
                answer.station(),
                String.valueOf(answer.winters().size()),
                String.valueOf(complete),
                lowest == null ? "-" : degrees(lowest.minimum()),
                lowest == null ? "-" : day(answer, lowest.date()));
        return Wording.clean(answer.hourly() ? text + " " + Prose.text("winters.hourly") : text);
    }

    /** The answer in one sentence. */
    String headline() {
        if (answer.typicalYear()) {
            return Prose.text("winters.typical");
        }
        if (answer.expected() == null) {
            return Prose.text(
                    "winters.few",
                    String.valueOf(
                            answer.winters().stream().filter(Winter::complete).count()),
                    String.valueOf(ExpectedCold.FEWEST));
        }
        ExpectedCold.Line line = asked(answer, answer.expected());
        return Prose.text(
                "winters.headline",
                years(line.years()),
                degrees(line.gumbel()),
                degrees(line.low()),
                degrees(line.high()));
    }

    static ExpectedCold.Line asked(Winters answer, ExpectedCold expected) {
        return expected.lines().stream()
                .filter(line -> line.years() == answer.years())
                .findFirst()
                .orElseThrow();
    }

    private void expected(ExpectedCold expected, List<String> lines) {
        lines.add(Prose.text("winters.table.head"));
        for (ExpectedCold.Line line : expected.lines()) {
            lines.add(String.format(
                    java.util.Locale.ROOT,
                    " %10s %14s %8s to %-8s %14s %18s",
                    years(line.years()),
                    units.number(Measure.TEMPERATURE, line.gumbel()),
                    units.number(Measure.TEMPERATURE, line.low()),
                    units.number(Measure.TEMPERATURE, line.high()),
                    units.number(Measure.TEMPERATURE, line.gev()),
                    Figures.whole(100 * (1 - Math.pow(1 - 1 / line.years(), 10))) + " %"));
        }
        int n = expected.winters().size();
        lines.add(Prose.text(
                "winters.fit",
                String.valueOf(n),
                expected.winters().get(0).label(answer.south()),
                expected.winters().get(n - 1).label(answer.south()),
                String.valueOf(expected.seed()),
                String.valueOf(expected.draws())));
        if (n < ExpectedCold.ENOUGH) {
            lines.add(Prose.text("winters.fit.few", String.valueOf(ExpectedCold.ENOUGH)));
        }
        lines.add(gev(expected, n));
        if (expected.isTrending()) {
            lines.add(Prose.text(
                    expected.trend() > 0 ? "winters.trend.warmer" : "winters.trend.colder",
                    units.text(Measure.DIFFERENCE, Math.abs(expected.trend())),
                    units.text(Measure.DIFFERENCE, expected.trendError())));
        }
    }

    private String gev(ExpectedCold expected, int n) {
        if (expected.gev() == null) {
            return Prose.text("winters.gev.none", String.valueOf(ExpectedCold.FEWEST_FOR_GEV), String.valueOf(n));
        }
        ExpectedCold.Line last = expected.lines().get(expected.lines().size() - 1);
        boolean colder = last.gev() < last.gumbel() - 1;
        return Prose.text(
                colder ? "winters.gev.colder" : "winters.gev",
                Figures.decimals(expected.gev().shape(), 2),
                years(last.years()),
                degrees(last.gev()));
    }

    private void leftOut(List<String> lines) {
        List<Winter> partial =
                answer.winters().stream().filter(winter -> !winter.complete()).toList();
        if (partial.isEmpty() || answer.typicalYear()) {
            return;
        }
        String named = partial.stream()
                .limit(NAMED)
                .map(winter -> winter.label(answer.south()) + " (" + Figures.whole(100 * winter.coverage()) + " %)")
                .collect(Collectors.joining(", "));
        lines.add(Prose.text(
                partial.size() > NAMED ? "winters.partial.more" : "winters.partial",
                named,
                String.valueOf(partial.size() - NAMED),
                Figures.whole(100 * Winter.LEAST_COVERAGE)));
    }

    // --- Design nights ---

    private void designs(List<String> lines) {
        for (int i = 0; i < answer.designs().size(); i++) {
            DesignNight design = answer.designs().get(i);
            String text = Prose.text("winters.design." + design.kind()) + ": " + weather(design.summary()) + "; "
                    + origin(design);
            if (answer.kit() != null) {
                text += " "
                        + Prose.text(
                                "winters.design.kit",
                                outcome(answer.designRuns().get(i)));
            }
            lines.add(text);
        }
        for (DesignNight.Kind kind : DesignNight.Kind.values()) {
            if (answer.designs().stream().noneMatch(design -> design.kind() == kind)) {
                lines.add(Prose.text("winters.design." + kind) + ": " + Prose.text("winters.design.none." + kind));
            }
        }
        List<String> guesses = answer.designs().stream()
                .flatMap(design -> design.guesses().stream()
                        .map(guess -> Prose.text("winters.kind." + design.kind()) + " " + guess.quantity() + " "
                                + units.guessed(guess)))
                .toList();
        if (!guesses.isEmpty()) {
            lines.add(Prose.text("winters.guessed", String.join("; ", guesses)));
        }
    }

    private String origin(DesignNight design) {
        return Prose.text(
                "winters.origin." + design.origin(),
                day(answer, design.summary().date()),
                String.valueOf(design.of()),
                years(answer.years()));
    }

    /** What to call a design night where it stands alone. */
    public static String name(Winters answer, DesignNight design) {
        return Wording.clean(
                Prose.text("winters.name", Prose.text("winters.design." + design.kind()), answer.station()));
    }

    /** What a file of a design night says about itself. */
    public static List<String> remarks(Winters answer, DesignNight design) {
        WintersPage page = new WintersPage(answer, Units.METRIC);
        List<String> remarks = new ArrayList<>();
        remarks.add(name(answer, design) + ": " + page.origin(design));
        remarks.add(page.headline());
        for (Guess guess : design.guesses()) {
            remarks.add(StudyTexts.guess(guess));
        }
        answer.cautions().forEach(caution -> remarks.add(Wording.shortText(caution)));
        return remarks;
    }

    private String weather(RecordedNight night) {
        return Prose.text(
                "winters.weather",
                degrees(night.meanAir()),
                degrees(night.lowestAir()),
                units.text(Measure.WIND, night.meanWind()),
                sky(night),
                night.rain() < 0.05 ? Prose.text("winters.dry") : units.text(Measure.RAIN, night.rain()));
    }

    private static String sky(RecordedNight night) {
        String word = night.meanCloud() < 0.25 ? "clear" : night.meanCloud() < 0.75 ? "broken" : "overcast";
        return Prose.text("winters.sky." + word);
    }

    // --- The kit ---

    private void kit(List<String> lines) {
        lines.add(Wording.clean(Prose.text(
                "winters.kit",
                Objects.requireNonNull(answer.kit()).kitName(),
                Wording.person(answer.kit().person()))));
        if (!answer.hourly()) {
            lines.add(Prose.text("winters.kit.daily"));
            return;
        }
        lines.add(counts(answer));
        if (answer.incomplete() > 0) {
            lines.add(Prose.text("winters.kit.gaps", String.valueOf(answer.incomplete())));
        }
        List<KitNight> run =
                answer.nights().stream().filter(night -> !night.isOutside()).toList();
        for (int i = 0; i < Math.min(WORST, run.size()); i++) {
            lines.add((i + 1) + ". " + day(answer, run.get(i).night().date()) + ": " + outcome(run.get(i)) + " "
                    + why(run.get(i), run));
        }
    }

    /** How many nights came to what. */
    static String counts(Winters answer) {
        return Prose.text(
                "winters.kit.counts",
                String.valueOf(answer.nights().size()),
                count(answer, Verdict.Outcome.HOLDS_EASILY),
                count(answer, Verdict.Outcome.HOLDS_BY_SHIVERING),
                count(answer, Verdict.Outcome.DOES_NOT_HOLD),
                count(answer, Verdict.Outcome.OUTSIDE_THE_MODEL));
    }

    private static String count(Winters answer, Verdict.Outcome outcome) {
        return String.valueOf(answer.nights().stream()
                .filter(night -> night.outcome() == outcome)
                .count());
    }

    private String outcome(KitNight night) {
        String stopped = Double.isNaN(night.stopped())
                ? ""
                : " "
                        + Prose.text(
                                "winters.stopped",
                                Figures.decimals(night.stopped() / 3600, 1),
                                units.line(Measure.TEMPERATURE, 32));
        String parts = night.atRisk().isEmpty()
                ? ""
                : " "
                        + night.atRisk().stream()
                                .map(part -> Prose.text("winters.risk." + part))
                                .collect(Collectors.joining(" "));
        return Prose.text(
                        "winters.outcome",
                        Prose.text("winters.outcome." + night.outcome()),
                        units.text(Measure.HEAT, night.shortfall()),
                        units.deficit(night.deficit()),
                        Figures.decimals(night.demand(), 2))
                + stopped
                + parts;
    }

    /** What sets a night apart from the others: its air and wind among all, its sky, its rain, and where most heat went. */
    private String why(KitNight night, List<KitNight> all) {
        return Prose.text(
                "winters.why",
                weather(night.night()),
                share(night, all, each -> each.night().meanAir()),
                share(night, all, each -> -each.night().meanWind()),
                Prose.text("way." + largest(night)),
                Figures.whole(100 * night.lost()[largest(night).ordinal()] / night.lostInAll()));
    }

    private static Way largest(KitNight night) {
        return java.util.Arrays.stream(Way.values())
                .max(Comparator.comparingDouble(way -> night.lost()[way.ordinal()]))
                .orElseThrow();
    }

    private static String share(KitNight night, List<KitNight> all, ToDoubleFunction<KitNight> by) {
        double value = by.applyAsDouble(night);
        long lower = all.stream().filter(each -> by.applyAsDouble(each) < value).count();
        return Figures.whole(Math.max(1, Math.ceil(100.0 * (lower + 1) / all.size())));
    }

    private String degrees(double celsius) {
        return units.text(Measure.TEMPERATURE, celsius);
    }

    static String years(double years) {
        return Figures.significant(years, 3);
    }

    /** A date; in a typical year, whose years mean nothing, month and day. */
    static String day(Winters answer, java.time.LocalDate date) {
        return answer.typicalYear() ? date.toString().substring(5) : date.toString();
    }
}
