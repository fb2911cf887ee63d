package longnight.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longnight.night.NightResult;
import longnight.quantity.Dimension;
import longnight.quantity.Quantities;
import longnight.quantity.UnitSystem;
import longnight.study.Cloud;
import longnight.study.Doubt;
import longnight.study.Driver;
import longnight.study.Extent;
import longnight.study.ForecastError;
import longnight.study.Indices;
import longnight.study.PeopleRange;
import longnight.study.Spread;
import longnight.study.SpreadAnswer;
import longnight.study.SpreadAnswer.Quantity;
import longnight.study.SpreadQuestion;

/** The sentences that the outputs about how far an answer is open share. */
final class SpreadWording {
    /** A group that moves less than this share of the variance is told in a list. */
    private static final double LITTLE = 0.005;

    private final SpreadAnswer answer;
    private final Units units;

    SpreadWording(SpreadAnswer answer, Units units) {
        this.answer = answer;
        this.units = units;
    }

    SpreadAnswer answer() {
        return answer;
    }

    Units units() {
        return units;
    }

    // --- The answer ---

    String who() {
        return Wording.who(answer.given().asWritten());
    }

    /** How many draws hold, of both nights. */
    String headline() {
        Cloud given = answer.given().all();
        Cloud worst = answer.worst().all();
        return Prose.text(
                "spread.headline",
                doubts(answer.question().over()),
                String.valueOf(given.draws() - crossing(given, Cloud.Crossed.ANY)),
                String.valueOf(given.draws()),
                String.valueOf(worst.draws() - crossing(worst, Cloud.Crossed.ANY)),
                String.valueOf(worst.draws()));
    }

    /** What comes to harm before the core does, in how many draws of the night as given. */
    String atRisk() {
        Cloud given = answer.given().all();
        return Prose.text(
                "spread.risk",
                percent(given, Cloud.Crossed.HANDS),
                percent(given, Cloud.Crossed.FEET),
                percent(given, Cloud.Crossed.FACE));
    }

    private static int crossing(Cloud cloud, Cloud.Crossed line) {
        return cloud.crossing().getOrDefault(line, 0);
    }

    /** What drives it most. */
    String most() {
        List<Driver> ranked = ranked();
        return ranked.isEmpty()
                ? Prose.text("spread.most.none")
                : Prose.text(
                        "spread.most",
                        driver(ranked.get(0)),
                        Figures.decimals(
                                index(Quantity.SHORTFALL_HEAT, ranked.get(0))
                                        .total()
                                        .value(),
                                2));
    }

    String given() {
        return Prose.text("spread.given", Wording.verdict(answer.given().asWritten(), units));
    }

    String worst() {
        return Prose.text(
                "spread.worst", worstIs(), Wording.verdict(answer.worst().asWritten(), units));
    }

    /** "2.0 K colder and 30 % windier". */
    String worstIs() {
        return Prose.text(
                "spread.worst.is",
                units.text(Measure.DIFFERENCE, answer.question().colder()),
                Figures.significant(100 * answer.question().windier(), 3));
    }

    static String doubts(Collection<Doubt> over) {
        List<String> words = over.stream()
                .sorted()
                .map(doubt -> Prose.text("spread.doubt." + doubt))
                .toList();
        return words.size() == 1
                ? words.get(0)
                : Prose.text(
                        "spread.and",
                        String.join(", ", words.subList(0, words.size() - 1)),
                        words.get(words.size() - 1));
    }

    /** "all together" where several things are drawn. */
    String cloud(Cloud cloud) {
        return cloud.over().size() > 1 ? Prose.text("spread.together") : doubts(cloud.over());
    }

    static String driver(Driver driver) {
        return Prose.text("spread.driver." + driver);
    }

    // --- Figures ---

    /** Both ends; a question mark for one beyond the model's range. */
    String number(Measure measure, Spread spread) {
        return range(units.number(measure, spread.low()), units.number(measure, spread.high()), spread);
    }

    String demand(Spread spread) {
        return range(Figures.decimals(spread.low(), 2), Figures.decimals(spread.high(), 2), spread);
    }

    /** Nothing below none, and inside the dead band only that it is inside. */
    String deficit(Spread spread) {
        return range(units.deficitNumber(spread.low()), units.deficitNumber(spread.high()), spread);
    }

    private static String range(String low, String high, Spread spread) {
        if (Double.isNaN(spread.low()) || Double.isNaN(spread.high())) {
            return Figures.NONE;
        }
        String from = Double.isInfinite(spread.low()) ? "?" : low;
        String to = Double.isInfinite(spread.high()) ? "?" : high;
        return from.equals(to) ? from : Prose.text("spread.range", from, to);
    }

    /** Draws that cross a line [%]; none and all only where it is none and all. */
    static String percent(Cloud cloud, Cloud.Crossed line) {
        int crossing = crossing(cloud, line);
        String whole = Figures.whole(100.0 * crossing / cloud.draws());
        if (crossing > 0 && whole.equals("0")) {
            return "<1";
        }
        return crossing < cloud.draws() && whole.equals("100") ? ">99" : whole;
    }

    static String estimate(Indices.Estimate estimate) {
        if (Double.isNaN(estimate.value())) {
            return Figures.NONE;
        }
        return Prose.text("spread.estimate", two(estimate.value()), two(estimate.low()), two(estimate.high()));
    }

    private static String two(double value) {
        String text = Figures.decimals(value, 2);
        return text.equals("-0.00") ? "0.00" : text;
    }

    Indices.Index index(Quantity quantity, Driver driver) {
        Map<Driver, Indices.Index> of = answer.indices().get(quantity);
        Indices.Index index = of == null ? null : of.get(driver);
        if (index == null) {
            throw new IllegalArgumentException(quantity + " of " + driver);
        }
        return index;
    }

    Indices.Estimate sum(Quantity quantity) {
        return java.util.Objects.requireNonNull(answer.sums().get(quantity));
    }

    /** Groups that move shortfall heat or demand, those first that move shortfall heat most. */
    List<Driver> ranked() {
        return drawn().stream()
                .filter(driver ->
                        total(Quantity.SHORTFALL_HEAT, driver) >= LITTLE || total(Quantity.DEMAND, driver) >= LITTLE)
                .sorted(Comparator.comparingDouble((Driver driver) -> total(Quantity.SHORTFALL_HEAT, driver))
                        .reversed())
                .toList();
    }

    private double total(Quantity quantity, Driver driver) {
        return index(quantity, driver).total().value();
    }

    private List<Driver> drawn() {
        return List.copyOf(java.util.Objects.requireNonNull(answer.indices().get(Quantity.SHORTFALL_HEAT))
                .keySet());
    }

    /** Groups that hardly move it, in words; empty for none. */
    String little() {
        List<Driver> ranked = ranked();
        String names = drawn().stream()
                .filter(driver -> !ranked.contains(driver))
                .map(SpreadWording::driver)
                .collect(Collectors.joining("; "));
        return names.isEmpty() ? "" : Prose.text("spread.little", names);
    }

    // --- How it was made ---

    /** How to read it, what was drawn and how. */
    List<String> notes() {
        List<String> notes = new ArrayList<>(reading());
        notes.addAll(drawing());
        return notes;
    }

    /** How to read indices. */
    List<String> reading() {
        List<String> notes = new ArrayList<>();
        notes.add(Prose.text("spread.note.read"));
        notes.add(Prose.text(
                "spread.note.indices",
                String.valueOf(answer.rows()),
                String.valueOf(Indices.RESAMPLED),
                estimate(sum(Quantity.SHORTFALL_HEAT))));
        if (answer.stopped() > 0) {
            notes.add(Prose.text(
                    "spread.note.stopped", String.valueOf(answer.stopped()), units.line(Measure.TEMPERATURE, 32)));
        }
        return notes;
    }

    /** What was drawn, and until when. */
    List<String> drawing() {
        SpreadQuestion question = answer.question();
        List<String> notes = new ArrayList<>();
        if (question.over().contains(Doubt.PEOPLE)) {
            notes.add(people(question.people()));
        }
        if (question.over().contains(Doubt.FORECAST)) {
            notes.add(forecast(question.forecast()));
        }
        if (question.over().contains(Doubt.MODEL)) {
            notes.add(Prose.text("spread.note.model"));
        }
        notes.add(Prose.text(
                "spread.note.rule",
                Figures.significant(100 * SpreadAnswer.TOLERANCE, 2),
                units.deadBand(),
                Figures.significant(SpreadAnswer.WIDEST, 2)));
        notes.add(settled());
        notes.add(Prose.text(
                "spread.note.seed",
                String.valueOf(answer.nights()),
                String.valueOf(answer.question().seed())));
        return notes;
    }

    /** Whether the rule was met everywhere, and where it was not. */
    private String settled() {
        List<String> open = new ArrayList<>();
        open("spread.open.given", answer.given(), open);
        open("spread.open.worst", answer.worst(), open);
        if (!answer.settled()) {
            open.add(Prose.text("spread.open.indices"));
        }
        return open.isEmpty()
                ? Prose.text("spread.settled")
                : Prose.text("spread.open", String.valueOf(answer.question().most()), String.join("; ", open));
    }

    private void open(String key, SpreadAnswer.Side side, List<String> open) {
        side.clouds().stream()
                .filter(cloud -> !cloud.settled())
                .forEach(cloud -> open.add(Prose.text(
                        key,
                        cloud(cloud),
                        Double.isInfinite(cloud.moved())
                                ? Prose.text("spread.open.range")
                                : Prose.text("spread.open.moved", Figures.significant(100 * cloud.moved(), 2)))));
    }

    private String people(PeopleRange people) {
        UnitSystem system = units.isMetric() ? UnitSystem.METRIC : UnitSystem.IMPERIAL;
        return Prose.text(
                "spread.note.people",
                range(people.mass(), 1, Dimension.MASS, system),
                range(people.height(), 1, Dimension.LENGTH, system),
                range(people.fat(), 0.01, Dimension.FRACTION, system),
                range(people.age(), 1, Dimension.AGE, system),
                range(people.fitness(), 1, Dimension.OXYGEN_UPTAKE, system));
    }

    private static String range(Extent of, double toEngine, Dimension dimension, UnitSystem system) {
        return Prose.text(
                "spread.range",
                Quantities.format(toEngine * of.low(), dimension, system),
                Quantities.format(toEngine * of.high(), dimension, system));
    }

    private String forecast(ForecastError error) {
        return Prose.text(
                "spread.note.forecast",
                units.text(Measure.DIFFERENCE, error.air().holding()),
                units.text(Measure.DIFFERENCE, error.air().wandering()),
                shares(error.wind()),
                units.text(Measure.WIND, ForecastError.LEAST_WIND),
                shares(error.humidity()),
                shares(error.cloud()),
                shares(error.precipitation()),
                Figures.significant(ForecastError.MEMORY / 3600, 2),
                Figures.significant(ForecastError.CUT, 2));
    }

    private static String shares(ForecastError.Part part) {
        return Prose.text(
                "spread.shares",
                Figures.significant(100 * part.holding(), 2),
                Figures.significant(100 * part.wandering(), 2));
    }

    static String caution() {
        return Prose.text("spread.caution");
    }

    /** The cautions of both nights, the verb's own first. */
    List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        cautions.add(caution());
        answer.cautions().forEach(caution -> cautions.add(Wording.shortText(caution, units)));
        return cautions;
    }

    static String outcome(NightResult night) {
        return Prose.text("worth.outcome." + night.verdict().outcome());
    }
}
