package longnight.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import longnight.assumption.Guess;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.figure.BodySegment;
import longnight.night.Caution;
import longnight.night.HourRow;
import longnight.night.NightResult;
import longnight.night.Phase;
import longnight.night.SecondOpinion;
import longnight.night.WaterReport;
import longnight.night.Way;
import longnight.study.Band;
import org.jspecify.annotations.Nullable;

/** Everything there is to tell about one night, on one page. */
final class NightPage {
    static final String FILE = "report.html";

    private final NightResult result;
    private final @Nullable Band band;
    private final Units units;
    private final Page page;

    private NightPage(NightResult result, @Nullable Band band, Units units) {
        this.result = result;
        this.band = band;
        this.units = units;
        page = new Page(
                Prose.text("html.night.title"),
                Wording.verdict(result, units),
                Wording.atRisk(result, units),
                Wording.who(result));
    }

    /** {@link #of(NightResult, Band, Units)} of a night without a band in metric units. */
    static Page of(NightResult result) {
        return of(result, null, Units.METRIC);
    }

    static Page of(NightResult result, @Nullable Band band, Units units) {
        return new NightPage(result, band, units).made();
    }

    private Page made() {
        page.text(result.scenario().title());
        if (Wording.hasRun(result)) {
            deficit();
            heat();
            hours();
            water();
            day();
        }
        kit();
        opinion();
        guesses();
        for (Caution caution : result.cautions()) {
            page.caution(Wording.fullText(caution, units));
        }
        page.footer.add(MadeBy.line(ResultJson.text(result, band)));
        return page;
    }

    private void deficit() {
        page.heading(Prose.text("html.bill"));
        page.add(new Page.Figure(
                Prose.text("chart.deficit.title"),
                words("chart.deficit.title"),
                Charts.coreHeatDeficit(result, band, units)));
        page.add(new Page.Items(Account.headlines(result, band, units)));
    }

    private void heat() {
        page.heading(Prose.text("chart.heat.title"));
        page.add(new Page.Figure(
                Prose.text("chart.heat.title"), words("chart.heat.title"), Charts.whereTheHeatGoes(result, units)));
        String heat = units.unit(Measure.HEAT);
        double duration = Wording.end(result);
        double lost = Arrays.stream(result.ledger().lostByWay()).sum();
        List<List<String>> ways = new ArrayList<>();
        for (Way way : Way.values()) {
            ways.add(share(Prose.text("way." + way), result.ledger().lostByWay()[way.ordinal()], lost, duration));
        }
        page.add(new Page.Grid(Prose.text("html.ways"), Page.columns("html.ways.columns", heat), ways));
        List<List<String>> parts = new ArrayList<>();
        for (BodySegment part : BodySegment.values()) {
            parts.add(share(Prose.text("part." + part), result.ledger().lostByPart()[part.ordinal()], lost, duration));
        }
        parts.add(share(Prose.text("way.BREATH"), result.ledger().breath(), lost, duration));
        page.add(new Page.Grid(Prose.text("html.parts"), Page.columns("html.parts.columns", heat), parts));
    }

    private List<String> share(String name, double joules, double all, double duration) {
        return List.of(
                name,
                Figures.decimals(joules / duration, 1),
                units.number(Measure.HEAT, joules),
                Figures.whole(100 * joules / all));
    }

    private void hours() {
        page.heading(Prose.text("html.hours"));
        List<List<String>> rows = new ArrayList<>();
        for (HourRow row : result.hours()) {
            rows.add(List.of(
                    Figures.clock(row.clock()),
                    units.number(Measure.TEMPERATURE, row.airCelsius()),
                    units.number(Measure.WIND, row.windAtBody()),
                    Figures.whole(row.heatMade()),
                    Figures.whole(row.losses()),
                    units.number(Measure.HEAT, row.shortfall()),
                    units.deficitNumber(row.coreHeatDeficit()),
                    band == null ? Figures.NONE : Wording.deficits(band.deficitAt(row.time()), units),
                    units.number(Measure.TEMPERATURE, row.coreCelsius()),
                    units.number(Measure.TEMPERATURE, row.meanSkin()),
                    units.number(Measure.TEMPERATURE, row.hand()),
                    units.number(Measure.TEMPERATURE, row.foot()),
                    Figures.whole(100 * row.sleep())));
        }
        page.add(new Page.Grid(
                Prose.text("html.hours.caption"),
                Page.columns(
                        "html.hours.columns",
                        units.unit(Measure.TEMPERATURE),
                        units.unit(Measure.WIND),
                        units.unit(Measure.HEAT)),
                rows));
    }

    private void water() {
        WaterReport water = result.water();
        if (water == null) {
            return;
        }
        page.heading(Prose.text("html.water"));
        if (Account.isWet(result)) {
            page.add(new Page.Figure(
                    Prose.text("chart.water.title"), words("chart.water.title"), Charts.waterByLayer(result, units)));
        }
        List<List<String>> rows = new ArrayList<>();
        for (WaterReport.Layer layer : water.layers()) {
            rows.add(List.of(
                    layer.id(),
                    piece(layer.liquidAtDusk()),
                    piece(layer.iceAtDusk()),
                    piece(layer.boundAtDusk()),
                    piece(layer.liquidAtDawn()),
                    piece(layer.iceAtDawn()),
                    piece(layer.boundAtDawn())));
        }
        page.add(new Page.Grid(
                Prose.text("html.water.caption", units.unit(Measure.PIECE)), Page.columns("html.water.columns"), rows));
        page.text(Account.water(result, units));
    }

    private void day() {
        page.heading(Prose.text("html.plan"));
        List<List<String>> rows = new ArrayList<>();
        for (Phase phase : result.scenario().plan().phases()) {
            rows.add(List.of(
                    phase.name(),
                    Wording.clock(result, phase.from()),
                    Wording.clock(result, phase.to()),
                    phase.march() != null ? Prose.text("html.walking") : word(phase.posture()),
                    worn(phase)));
        }
        page.add(new Page.Grid(Prose.text("html.plan.caption"), Page.columns("html.plan.columns"), rows));
        page.text(Account.day(result, units));
        page.text(Account.fuel(result, units));
    }

    private String worn(Phase phase) {
        return phase.outfit() instanceof Outfit.Kit kit
                ? kit.pieces().stream().map(piece -> piece.spec().name()).collect(Collectors.joining(", "))
                : Prose.text("html.all-worn");
    }

    private void kit() {
        page.heading(Prose.text("html.kit"));
        if (result.scenario().outfit() instanceof Outfit.Kit kit) {
            List<List<String>> rows = new ArrayList<>();
            for (Garment piece : kit.pieces()) {
                String id = piece.spec().id();
                rows.add(List.of(
                        piece.spec().name(),
                        word(piece.spec().kind()),
                        piece(piece.spec().mass()),
                        guessedOf(id)));
            }
            for (Pad pad : kit.pads()) {
                rows.add(List.of(pad.name(), Prose.text("html.pad"), piece(pad.mass()), guessedOf(pad.id())));
            }
            page.add(new Page.Grid(
                    Prose.text("html.kit.caption"), Page.columns("html.kit.columns", units.unit(Measure.PIECE)), rows));
        }
        if (Double.isFinite(result.kitResistance())) {
            page.text(Account.kit(result, units));
        }
    }

    private String guessedOf(String subject) {
        Set<String> quantities = result.guessed().stream()
                .filter(guess -> guess.subject().equals(subject))
                .map(Guess::quantity)
                .collect(Collectors.toCollection(TreeSet::new));
        return quantities.isEmpty() ? Prose.text("html.nothing-guessed") : String.join(", ", quantities);
    }

    private void opinion() {
        page.heading(Prose.text("html.opinion"));
        SecondOpinion opinion = result.secondOpinion();
        page.text(Account.opinion(opinion, units));
    }

    private void guesses() {
        page.heading(Prose.text("html.guesses"));
        if (result.guessed().isEmpty()) {
            page.text(Prose.text("page.guessed.none"));
        } else {
            page.add(AnswerPage.guesses(result.guessed(), units));
        }
    }

    private String words(String titleKey) {
        return Prose.text("html.alt", Prose.text(titleKey), Wording.verdict(result, units), Wording.who(result));
    }

    private String piece(double mass) {
        return units.number(Measure.PIECE, mass);
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
