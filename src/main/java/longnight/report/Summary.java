package longnight.report;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longnight.clothing.Garment;
import longnight.clothing.GarmentSpec;
import longnight.clothing.Outfit;
import longnight.night.NightResult;
import longnight.night.Phase;
import org.jspecify.annotations.Nullable;

/**
 * A night in one row. The same columns in the same order wherever many nights stand below each other; a column may be added at
 * the end, none changes its meaning.
 */
final class Summary {
    /** What a value is: a word, a number in SI, a whole number of things, or a moment [s from dusk]. */
    enum Kind {
        WORD,
        NUMBER,
        COUNT,
        MOMENT
    }

    /**
     * One column.
     *
     * @param header in a table, with the unit in square brackets
     * @param key    in JSON, ending with the unit in SI
     * @param scale  from SI to the unit of the table
     * @param measure what is measured, where the unit is another in the other system; null otherwise
     * @param word   for words; empty otherwise
     * @param value  for numbers and moments; NaN otherwise
     */
    record Column(
            String header,
            String key,
            Kind kind,
            double scale,
            @Nullable Measure measure,
            Function<NightResult, String> word,
            ToDoubleFunction<NightResult> value) {

        /** The header in a table for readers of one unit system. */
        String header(Units units) {
            return measure == null
                    ? header
                    : header.substring(0, header.lastIndexOf(" [")) + HourCsv.unit(units, measure);
        }

        /** The cell in such a table. */
        String cell(NightResult result, Units units) {
            return measure == null ? cell(result) : Figures.exact(units.value(measure, value.applyAsDouble(result)));
        }

        /** The cell in a table, empty where there is no value. */
        String cell(NightResult result) {
            return switch (kind) {
                case WORD -> Wording.clean(word.apply(result)).replace('\n', ' ');
                case NUMBER -> Figures.exact(scale * value.applyAsDouble(result));
                case COUNT -> {
                    double count = value.applyAsDouble(result);
                    yield Double.isFinite(count) ? Figures.whole(count) : "";
                }
                case MOMENT -> {
                    double time = value.applyAsDouble(result);
                    yield Double.isFinite(time) ? Wording.clock(result, time) : "";
                }
            };
        }
    }

    static final List<Column> COLUMNS = List.of(
            word("outcome", "outcome", result -> Summary.word(result.verdict().outcome())),
            moment(
                    "does not hold from [HH:MM]",
                    "from_s",
                    result -> result.verdict().from()),
            moment("reckoning stopped at [HH:MM]", "stopped_s", NightResult::stopped),
            number("demand [1]", "demand", 1, null, NightResult::demand),
            number("shortfall heat [kJ]", "shortfallHeat_J", 1e-3, Measure.HEAT, NightResult::shortfallHeat),
            number(
                    "core-heat deficit at the end, signed [kJ]",
                    "coreHeatDeficitEnd_J",
                    1e-3,
                    Measure.HEAT,
                    NightResult::coreHeatDeficitDawn),
            number(
                    "worst core-heat deficit [kJ]",
                    "coreHeatDeficitWorst_J",
                    1e-3,
                    Measure.HEAT,
                    NightResult::coreHeatDeficitWorst),
            moment("worst at [HH:MM]", "worst_s", NightResult::worstTime),
            number(
                    "lowest core [degC]",
                    "lowestCore_degC",
                    1,
                    Measure.TEMPERATURE,
                    result -> lowest(result.trace().core())),
            number("lowest hand [degC]", "lowestHand_degC", 1, Measure.TEMPERATURE, Summary::hand),
            number("lowest foot [degC]", "lowestFoot_degC", 1, Measure.TEMPERATURE, Summary::foot),
            word(
                    "at risk",
                    "atRisk",
                    result -> result.verdict().atRisk().stream()
                            .map(risk -> word(risk.part()))
                            .collect(Collectors.joining(" "))),
            number(
                    "liquid and ice in what is worn at the end [kg]",
                    "liquidAndIceEnd_kg",
                    1,
                    Measure.LOAD,
                    Summary::water),
            number("kit mass [kg]", "kitMass_kg", 1, Measure.LOAD, NightResult::kitMass),
            number("packed volume of pieces that tell it [L]", "packedVolume_m3", 1e3, null, Summary::packed),
            count("pieces that tell no packed volume [1]", "piecesWithoutPackedVolume", Summary::untold),
            number("kit resistance [m2K/W]", "kitResistance_m2K_W", 1, null, NightResult::kitResistance),
            count("guesses [1]", "guesses", result -> result.guessed().size()),
            word(
                    "cautions",
                    "cautions",
                    result -> result.cautions().stream().map(Summary::word).collect(Collectors.joining(" "))),
            word(
                    "limits",
                    "limits",
                    result -> String.join("; ", result.verdict().limits())));

    private Summary() {}

    private static Column word(String header, String key, Function<NightResult, String> word) {
        return new Column(header, key, Kind.WORD, 1, null, word, result -> Double.NaN);
    }

    private static Column number(
            String header, String key, double scale, @Nullable Measure measure, ToDoubleFunction<NightResult> value) {
        return new Column(header, key, Kind.NUMBER, scale, measure, result -> "", value);
    }

    private static Column count(String header, String key, ToDoubleFunction<NightResult> value) {
        return new Column(header, key, Kind.COUNT, 1, null, result -> "", value);
    }

    private static Column moment(String header, String key, ToDoubleFunction<NightResult> value) {
        return new Column(header, key, Kind.MOMENT, 1, null, result -> "", value);
    }

    /** A constant as data files spell it: HOLDS_EASILY is holds-easily. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static double hand(NightResult result) {
        return lowest(result.trace().hand());
    }

    static double foot(NightResult result) {
        return lowest(result.trace().foot());
    }

    /** Liquid and ice in what is worn at the end [kg]; NaN when water was not followed or nothing run. */
    static double water(NightResult result) {
        return Wording.hasRun(result)
                ? Account.wornAt(result, Wording.lastHour(result).time())
                : Double.NaN;
    }

    /** Packed volume of all pieces of any phase that tell it [m3]; NaN when none does. */
    static double packed(NightResult result) {
        List<Double> told = pieces(result)
                .map(GarmentSpec::packedVolume)
                .filter(volume -> volume != null)
                .toList();
        return told.isEmpty()
                ? Double.NaN
                : told.stream().mapToDouble(volume -> volume).sum();
    }

    /** How many pieces tell no packed volume; NaN for laboratory clothing. */
    static double untold(NightResult result) {
        return Double.isNaN(result.kitMass())
                ? Double.NaN
                : pieces(result).filter(piece -> piece.packedVolume() == null).count();
    }

    private static Stream<GarmentSpec> pieces(NightResult result) {
        Map<String, GarmentSpec> pieces = new LinkedHashMap<>();
        Stream<Outfit> outfits = Stream.concat(
                Stream.of(result.scenario().outfit()),
                result.scenario().plan().phases().stream().map(Phase::outfit));
        outfits.forEach(outfit -> {
            if (outfit instanceof Outfit.Kit kit) {
                kit.pieces().stream().map(Garment::spec).forEach(piece -> pieces.putIfAbsent(piece.id(), piece));
            }
        });
        return pieces.values().stream();
    }

    private static double lowest(double[] celsius) {
        return Arrays.stream(celsius).min().orElse(Double.NaN);
    }
}
