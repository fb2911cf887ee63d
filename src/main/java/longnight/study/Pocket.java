package longnight.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longnight.body.Person;
import longnight.clothing.Garment;
import longnight.clothing.Pad;
import longnight.night.Caution;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.night.Verdict;

/**
 * What a person takes along of a planned night: what it asks in other air and wind of a typical and of the weakest member, begun
 * dry and damp, and which changes help and which omissions hurt most.
 *
 * @param asPlanned the night as planned
 * @param people    the typical member, then the weakest
 * @param rows      from the warmest
 * @param helps     changes that save and go together, the largest first
 * @param omissions pieces and pads left out that cost, the largest first
 * @param drill     a warming drill added; empty where the plan has one already
 * @param cautions  that apply to any of these nights, the general one first
 * @param nights    how many nights were run
 */
public record Pocket(
        NightResult asPlanned,
        List<Person> people,
        List<Row> rows,
        List<Effect> helps,
        List<Effect> omissions,
        Optional<Effect> drill,
        List<Caution> cautions,
        int nights) {
    /** Steady winds of the table at 10 m in the open, those of {@link Coldest} [m/s]. */
    public static final List<Double> WINDS = Coldest.TABLE_WINDS;

    private static final ModelChoice NOMINAL = ModelChoice.nominal();
    /** At 10 m in the open [m/s]; a choice for the sheet, no source. */
    private static final double MIDDLE_WIND = 5;

    /**
     * One air temperature.
     *
     * @param air   of the night
     * @param cells by person, for each by wind, for each dry and then damp
     */
    public record Row(Air air, List<Cell> cells) {
        /** The cell of a person (0, 1) at a wind (its place in {@link #WINDS}), begun damp or dry. */
        public Cell cell(int person, int wind, boolean damp) {
            return cells.get((person * WINDS.size() + wind) * 2 + (damp ? 1 : 0));
        }
    }

    /**
     * One night of the table.
     *
     * @param demand  [1]
     * @param verdict of it
     */
    public record Cell(double demand, Verdict verdict) {}

    /**
     * Works it all out.
     *
     * @param night   the question, within the model's range, outdoors, in clothes made of pieces, at least four hours long
     * @param weak    the weakest member
     * @param pieces  of the wardrobe
     * @param pads    of the wardrobe
     * @param threads how many work at once, 1 and up; the answer does not depend on it
     */
    public static Pocket of(Scenario night, Person weak, List<Garment> pieces, List<Pad> pads, int threads) {
        NumericalSettings settings = NumericalSettings.standard();
        NightResult base = run(night, settings);
        List<Change> changes = Changes.of(night, pieces, pads);
        List<Effect> effects = Together.ask(
                changes,
                change -> Worth.effect(
                        change, base, new Worth.Run(run(change.make().apply(night), settings), Double.NaN), Double.NaN),
                threads);
        Limit limit = new ColdSearch(
                        Coldest.inWind(ArrivedDamp.dry(night), MIDDLE_WIND), new Line(Line.Measure.DEMAND, 2), settings)
                .limit(NOMINAL);
        List<Person> people = List.of(night.person(), weak);
        List<Double> means = Coldest.means(limit, new Shifts(night));
        List<NightResult> results = Together.ask(asked(night, people, means), each -> run(each, settings), threads);
        Set<Caution> cautions = new LinkedHashSet<>(base.cautions());
        results.forEach(each -> cautions.addAll(each.cautions()));
        return new Pocket(
                base,
                people,
                rows(Air.of(night), means, results),
                best(effects),
                worst(effects),
                effects.stream()
                        .filter(each -> each.change().kind() == Change.Kind.DRILL)
                        .findFirst(),
                List.copyOf(cautions),
                1 + changes.size() + limit.nights() + results.size());
    }

    private static List<Scenario> asked(Scenario night, List<Person> people, List<Double> means) {
        double given = Air.of(night).mean();
        List<Scenario> asked = new ArrayList<>();
        for (double mean : means) {
            Scenario moved = new Shifts(night).at(mean - given);
            for (Person person : people) {
                for (double wind : WINDS) {
                    Scenario there = Coldest.inWind(moved.withPerson(person), wind);
                    asked.add(ArrivedDamp.dry(there));
                    asked.add(ArrivedDamp.damp(there));
                }
            }
        }
        return asked;
    }

    private static List<Row> rows(Air given, List<Double> means, List<NightResult> results) {
        int width = results.size() / means.size();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < means.size(); i++) {
            rows.add(new Row(
                    given.warmer(means.get(i) - given.mean()),
                    results.subList(i * width, (i + 1) * width).stream()
                            .map(each -> new Cell(each.demand(), each.verdict()))
                            .toList()));
        }
        return List.copyOf(rows);
    }

    private static NightResult run(Scenario night, NumericalSettings settings) {
        return NightEngine.compile(night, NOMINAL).run(settings);
    }

    /** The largest first, and none that a larger one shuts out. */
    private static List<Effect> best(List<Effect> effects) {
        List<Effect> best = new ArrayList<>();
        effects.stream()
                .filter(each -> each.shortfall() > Worth.FLOOR)
                .sorted(Comparator.comparingDouble(Effect::shortfall).reversed())
                .filter(each -> best.stream().allMatch(one -> one.change().goesWith(each.change())))
                .forEach(best::add);
        return List.copyOf(best);
    }

    /** What stops the run costs more than anything. */
    private static List<Effect> worst(List<Effect> effects) {
        return effects.stream()
                .filter(each -> each.change().kind() == Change.Kind.WITHOUT
                        || each.change().kind() == Change.Kind.WITHOUT_PAD)
                .filter(each -> each.stopped() || each.shortfall() < -Worth.FLOOR)
                .sorted(Comparator.comparingDouble(
                        each -> each.stopped() ? Double.NEGATIVE_INFINITY : each.shortfall()))
                .toList();
    }
}
