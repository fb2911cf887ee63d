package longnight.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import longnight.body.Person;
import longnight.night.Caution;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.night.Verdict;
import longnight.study.Limit.Reach;
import org.jspecify.annotations.Nullable;

/**
 * How cold a night a kit carries: for the night's own wind and as a curve over steady winds, begun dry and begun damp, for two
 * people; and what it asks at chosen temperatures and winds.
 *
 * @param night    as given
 * @param line     what a night may ask at most
 * @param curves   for each person dry, then damp
 * @param table    row by row from the warmest, each row from the calmest; begun dry, the first person
 * @param asGiven  the night as it was given, begun dry, the first person
 * @param air      of that night
 * @param cautions that apply to any of the nights found, the general one first
 * @param draws    of the model, for the bands; null when none were asked for
 * @param nights   how many nights were run
 */
public record Coldest(
        Scenario night,
        Line line,
        List<Curve> curves,
        List<Cell> table,
        NightResult asGiven,
        Air air,
        List<Caution> cautions,
        @Nullable Draws draws,
        int nights) {
    /** Steady winds of the curves, at 10 m in the open [m/s]. */
    public static final List<Double> WINDS = List.of(0.0, 1.0, 2.0, 3.0, 5.0, 7.5, 10.0, 15.0);

    /** Steady winds of the table [m/s]. */
    public static final List<Double> TABLE_WINDS = List.of(1.0, 5.0, 10.0);

    /** Draws of the model when nothing else is said. */
    public static final int DRAWS = 100;

    private static final int ROWS = 8;
    private static final double ROW_STEP = 5;

    /** Rows of the table that are warmer than the crossing in the middle wind, as far as the range allows. */
    private static final int WARMER_ROWS = 4;

    /**
     * One person, begun dry or damp.
     *
     * @param person  who
     * @param damp    whether begun damp, see {@link ArrivedDamp}
     * @param ownWind in the night's own course of wind
     * @param limits  at {@link #WINDS}
     * @param drawn   mean air of the coldest night carried in the night's own course of wind, over the draws of the model [degC];
     *     infinite beyond the ends of the model's air, minus at the cold end; null when nothing was drawn
     */
    public record Curve(
            Person person,
            boolean damp,
            Limit ownWind,
            List<Limit> limits,
            @Nullable Spread drawn) {}

    /**
     * One night of the table.
     *
     * @param air     of that night
     * @param wind    steady, at 10 m in the open [m/s]
     * @param asked   in the unit of the line's measure
     * @param demand  [1]
     * @param verdict of it
     */
    public record Cell(Air air, double wind, double asked, double demand, Verdict verdict) {}

    /**
     * Works it all out.
     *
     * @param night   the question, within the model's range
     * @param weak    the other person
     * @param line    what a night may ask at most
     * @param draws   of the model, for a band of every answer in the night's own wind; null for none
     * @param threads how many work at once, 1 and up; the answer does not depend on it
     * @throws UnsupportedOperationException in a chamber, which has no weather
     */
    public static Coldest of(Scenario night, Person weak, Line line, @Nullable Draws draws, int threads) {
        NumericalSettings settings = NumericalSettings.standard();
        ModelChoice nominal = ModelChoice.nominal();
        NightResult asGiven =
                NightEngine.compile(ArrivedDamp.dry(night), nominal).run(settings);
        List<Scenario> begun = new ArrayList<>();
        for (Person person : List.of(night.person(), weak)) {
            begun.add(ArrivedDamp.dry(night.withPerson(person)));
            begun.add(ArrivedDamp.damp(night.withPerson(person)));
        }
        List<Scenario> asked = new ArrayList<>();
        for (Scenario each : begun) {
            asked.add(each);
            WINDS.forEach(wind -> asked.add(inWind(each, wind)));
        }
        List<Limit> limits = Together.ask(asked, each -> new ColdSearch(each, line, settings).limit(nominal), threads);

        List<Curve> curves = new ArrayList<>();
        int stride = 1 + WINDS.size();
        int drawn = 0;
        for (int i = 0; i < begun.size(); i++) {
            Scenario each = begun.get(i);
            List<Limit> own = limits.subList(i * stride, (i + 1) * stride);
            Drawn band = drawn(new ColdSearch(each, line, settings), own.get(0), draws, threads);
            drawn += band.nights();
            curves.add(new Curve(
                    each.person(), i % 2 == 1, own.get(0), List.copyOf(own.subList(1, stride)), band.spread()));
        }
        List<Cell> table = table(begun.get(0), line, curves.get(0), threads);
        int runs = 1 + table.size() + limits.stream().mapToInt(Limit::nights).sum() + drawn;
        return new Coldest(
                night,
                line,
                List.copyOf(curves),
                table,
                asGiven,
                Air.of(night),
                cautions(asGiven, limits),
                draws,
                runs);
    }

    /** What the draws say of one answer, and how many nights were run for it. */
    private record Drawn(@Nullable Spread spread, int nights) {}

    private static Drawn drawn(ColdSearch search, Limit usual, @Nullable Draws draws, int threads) {
        if (draws == null) {
            return new Drawn(null, 0);
        }
        ColdDraws.Roots roots = new ColdDraws(search, usual).roots(draws, threads);
        double mean = Air.of(search.at(0)).mean();
        double nominal = switch (usual.reach()) {
            case FOUND -> usual.air().mean();
            case COLDER_THAN_MODEL -> Double.NEGATIVE_INFINITY;
            case NOT_EVEN_WARM -> Double.POSITIVE_INFINITY;
        };
        double[] means =
                Arrays.stream(roots.shifts()).map(shift -> mean + shift).toArray();
        return new Drawn(Spread.of(nominal, means), roots.nights());
    }

    /** The same night in a steady wind at 10 m in the open [m/s]. */
    static Scenario inWind(Scenario night, double wind) {
        return night.withSurroundings(night.surroundings().under(weather -> weather.inWind(wind)));
    }

    /** The curve that the answer is about: the first person, begun dry. */
    public Curve main() {
        return curves.get(0);
    }

    private static List<Cell> table(Scenario dry, Line line, Curve main, int threads) {
        record Place(double shift, double wind) {}
        Shifts shifts = new Shifts(dry);
        Limit middle = main.limits().get(WINDS.indexOf(5.0));
        List<Place> places = new ArrayList<>();
        for (double mean : means(middle, shifts)) {
            TABLE_WINDS.forEach(wind -> places.add(new Place(mean - shifts.air().mean(), wind)));
        }
        return Together.ask(
                places,
                place -> {
                    NightResult result = NightEngine.compile(
                                    inWind(shifts.at(place.shift()), place.wind()), ModelChoice.nominal())
                            .run(NumericalSettings.standard());
                    return new Cell(
                            shifts.air().warmer(place.shift()),
                            place.wind(),
                            line.asked(result),
                            result.demand(),
                            result.verdict());
                },
                threads);
    }

    /** Round mean temperatures about the crossing [degC], warmest first; all within the model's range. */
    static List<Double> means(Limit middle, Shifts shifts) {
        double mean = shifts.air().mean();
        double highest = ROW_STEP * Math.floor((mean + shifts.warmest()) / ROW_STEP);
        double lowest = ROW_STEP * Math.ceil((mean + shifts.coldest()) / ROW_STEP);
        double first = ROW_STEP * Math.round(middle.air().mean() / ROW_STEP) + WARMER_ROWS * ROW_STEP;
        first = Math.min(highest, Math.max(first, lowest + (ROWS - 1) * ROW_STEP));
        List<Double> means = new ArrayList<>();
        for (int i = 0; i < ROWS; i++) {
            means.add(first - i * ROW_STEP);
        }
        return means;
    }

    private static List<Caution> cautions(NightResult asGiven, List<Limit> limits) {
        Set<Caution> all = new LinkedHashSet<>(asGiven.cautions());
        for (Limit limit : limits) {
            if (limit.reach() == Reach.FOUND) {
                all.addAll(limit.cautions());
            }
        }
        all.remove(Caution.OUT_OF_RANGE);
        return List.copyOf(all);
    }
}
