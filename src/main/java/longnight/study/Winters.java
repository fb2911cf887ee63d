package longnight.study;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import longnight.night.Caution;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.outdoors.ClimateRecord;
import org.jspecify.annotations.Nullable;

/**
 * What a station's record says about nights to plan for.
 *
 * @param station     its name
 * @param south       whether its winter is in July
 * @param typicalYear whether the record is a typical year: then no return period is told
 * @param hourly      whether the record is hour by hour
 * @param winters     all that the record touches, in order
 * @param expected    null when there are too few complete winters, or the record is a typical year
 * @param years       the return period that was asked for
 * @param designs     the design nights that the record gives, at most one of each kind
 * @param kit         the question whose kit was run; null when none was given
 * @param nights      that kit in every night, worst first; empty when none was given or the record has no hours
 * @param designRuns  that kit in the design nights, in their order
 * @param incomplete  nights left out because the record has gaps of more than three hours in them
 * @param cautions    all that apply
 */
public record Winters(
        String station,
        boolean south,
        boolean typicalYear,
        boolean hourly,
        List<Winter> winters,
        @Nullable ExpectedCold expected,
        double years,
        List<DesignNight> designs,
        @Nullable Scenario kit,
        List<KitNight> nights,
        List<KitNight> designRuns,
        int incomplete,
        List<Caution> cautions) {

    /** Return periods that are always told [years]; the one asked for joins them. */
    private static final List<Double> USUAL = List.of(2.0, 5.0, 10.0, 20.0, 50.0);

    /** How many of the latest complete winters count when nothing else is said: winters warm. */
    public static final int LATEST = 30;

    /**
     * How to look at a record.
     *
     * @param years   return period of the clear calm design night [years], above 1
     * @param latest  how many of the latest complete winters count
     * @param seed    of the chance behind the bands
     * @param threads for the nights of a kit
     */
    public record Wish(double years, int latest, long seed, int threads) {}

    /**
     * Works a record through.
     *
     * @param record   the record
     * @param kit      a question whose person, kit, site and plan are run in the record's nights; null for none
     * @param settings for those nights
     */
    public static Winters of(ClimateRecord record, @Nullable Scenario kit, NumericalSettings settings, Wish wish) {
        List<Winter> winters = Winter.of(record);
        List<Winter> complete = winters.stream().filter(Winter::complete).toList();
        List<Winter> used = complete.subList(Math.max(0, complete.size() - wish.latest()), complete.size());
        boolean told = !record.typicalYear() && used.size() >= ExpectedCold.FEWEST && differ(used);
        @Nullable ExpectedCold expected = told ? ExpectedCold.of(used, years(wish.years()), wish.seed()) : null;

        NightTimes times = kit == null ? NightTimes.USUAL : NightTimes.of(kit.plan());
        @Nullable RecordedNights cut = record.hourly() == null ? null : new RecordedNights(record.hourly(), times);
        List<RecordedNight> nights = cut == null ? List.of() : cut.all();
        List<DesignNight> designs = designs(record, times, winters, used, expected, wish.years(), nights);

        List<KitNight> run = List.of();
        List<KitNight> designRuns = List.of();
        if (kit != null) {
            NightByNight engine = new NightByNight(kit, settings);
            run = engine.worstFirst(nights, wish.threads());
            designRuns =
                    designs.stream().map(design -> engine.run(design.summary())).toList();
        }
        return new Winters(
                record.station(),
                Winter.isSouthern(record),
                record.typicalYear(),
                record.hourly() != null,
                winters,
                expected,
                wish.years(),
                designs,
                kit,
                run,
                designRuns,
                cut == null ? 0 : cut.incomplete(),
                cautions(record, designs, run, designRuns));
    }

    /** Whether a question's kit can be run in a record's nights: not in a laboratory. */
    public static boolean canRun(Scenario question) {
        return NightByNight.canRun(question);
    }

    private static boolean differ(List<Winter> winters) {
        return winters.stream().mapToDouble(Winter::minimum).distinct().count() > 2;
    }

    private static double[] years(double asked) {
        Set<Double> all = new TreeSet<>(USUAL);
        all.add(asked);
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static List<DesignNight> designs(
            ClimateRecord record,
            NightTimes times,
            List<Winter> winters,
            List<Winter> used,
            @Nullable ExpectedCold expected,
            double years,
            List<RecordedNight> nights) {
        DesignNights designs = new DesignNights(record, times);
        List<DesignNight> found = new ArrayList<>();
        if (expected != null) {
            found.add(designs.clearCalm(expected.gumbel().coldest(years), used, DesignNight.Origin.EXPECTED));
        } else if (!winters.isEmpty()) {
            Winter lowest = winters.stream()
                    .min(java.util.Comparator.comparingDouble(Winter::minimum))
                    .orElseThrow();
            found.add(designs.clearCalm(lowest.minimum(), List.of(lowest), DesignNight.Origin.LOWEST_RECORDED));
        }
        found.addAll(
                record.hourly() != null
                        ? DesignNight.listed(designs.windy(nights), designs.wet(nights))
                        : DesignNight.listed(designs.windyDay(), designs.wetDay()));
        return List.copyOf(found);
    }

    private static List<Caution> cautions(
            ClimateRecord record, List<DesignNight> designs, List<KitNight> run, List<KitNight> designRuns) {
        Set<Caution> all = EnumSet.of(Caution.PLANNING_AID);
        if (record.typicalYear()) {
            all.add(Caution.TYPICAL_YEAR);
        }
        if (designs.stream().anyMatch(design -> !design.guesses().isEmpty())) {
            all.add(Caution.WEATHER_GUESSED);
        }
        run.forEach(night -> all.addAll(night.cautions()));
        designRuns.forEach(night -> all.addAll(night.cautions()));
        return List.copyOf(all);
    }

    /** Clock time of dusk in the design nights [s after midnight]. */
    public double startOfDay() {
        return (kit == null ? NightTimes.USUAL : NightTimes.of(kit.plan())).startOfDay();
    }

    /** The lowest temperature on record, partial winters included; null for an empty record. */
    public @Nullable Winter lowest() {
        return winters.stream()
                .min(java.util.Comparator.comparingDouble(Winter::minimum))
                .orElse(null);
    }
}
