package longnight.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import longnight.night.DayReport;
import longnight.night.FuelReport;
import longnight.night.HourRow;
import longnight.night.NightPlan;
import longnight.night.NightResult;
import longnight.night.Phase;
import longnight.night.SecondOpinion;
import longnight.night.WaterReport;
import longnight.study.Band;
import org.jspecify.annotations.Nullable;

/** Plan, water, food and drink, march and drill, in sentences. What there is nothing to tell about has none. */
final class Account {
    /** Liquid and ice in one piece worth a picture [kg]. */
    static final double DRAWN = 0.005;

    /** A piece is named when its water changed by this much, or when it is wet by that much at dusk or dawn [kg]. */
    private static final double CHANGED = 0.005;

    private static final double WET = 0.002;

    /** What is shown as 0.00 kg. */
    private static final double NOTHING = 0.005;

    /** Share of the shortfall heat that the working step may be off by, and the least heat worth naming [J]. */
    private static final double STEP_SHARE = 0.005;

    private static final double STEP_HEAT = 5e3;

    /** The measure in which people count food [J]. */
    private static final double PIECE = 1e6;

    /** What counts as sweating on the march, 50 g/h [kg/s]. */
    private static final double SWEATING = 0.05 / 3600;

    /** Body heat debt that ISO 11079:2007 allows [J/m2]; as the page tells it, no part of the verdict. */
    private static final double ISO_11079_DEBT = 144e3;

    private Account() {}

    /** {@link #of(NightResult, Units)} in metric units. */
    static List<String> of(NightResult result) {
        return of(result, Units.METRIC);
    }

    /** Everything there is to tell, in up to three paragraphs. */
    static List<String> of(NightResult result, Units units) {
        List<String> told = Wording.hasRun(result)
                ? List.of(
                        plan(result) + " " + day(result, units),
                        pieces(result, units) + " " + water(result, units),
                        fuel(result, units))
                : List.of(plan(result));
        return told.stream()
                .map(String::strip)
                .filter(paragraph -> !paragraph.isEmpty())
                .toList();
    }

    /** The phases by the clock, when there is more than one. */
    static String plan(NightResult result) {
        NightPlan plan = result.scenario().plan();
        if (plan.phases().size() < 2) {
            return "";
        }
        String phases = plan.phases().stream()
                .map(phase -> Wording.clock(result, phase.from()) + " " + Wording.name(phase.name()))
                .collect(Collectors.joining(", "));
        return Prose.text("page.plan", phases, Wording.clock(result, plan.duration()), Wording.clock(result, 0));
    }

    /** What each piece held at dusk and holds at the end. */
    static String pieces(NightResult result, Units units) {
        WaterReport water = result.water();
        if (water == null) {
            return "";
        }
        String pieces = water.layers().stream()
                .filter(Account::isTold)
                .map(piece ->
                        piece.id() + " " + held(units, piece.boundAtDusk(), piece.liquidAtDusk(), piece.iceAtDusk())
                                + " -> " + held(units, piece.boundAtDawn(), piece.liquidAtDawn(), piece.iceAtDawn()))
                .collect(Collectors.joining("; "));
        return pieces.isEmpty()
                ? Prose.text(
                        "page.water.pieces.none", units.text(Measure.PIECE, CHANGED), units.text(Measure.PIECE, WET))
                : Prose.text("page.water.pieces", pieces, units.unit(Measure.PIECE));
    }

    private static boolean isTold(WaterReport.Layer piece) {
        double dusk = piece.liquidAtDusk() + piece.iceAtDusk();
        double dawn = piece.liquidAtDawn() + piece.iceAtDawn();
        double change = dawn + piece.boundAtDawn() - dusk - piece.boundAtDusk();
        return Math.abs(change) > CHANGED || Math.max(dusk, dawn) > WET;
    }

    /** "92 (60 liquid, 18 ice)", in grams. */
    private static String held(Units units, double bound, double liquid, double ice) {
        List<String> free = new ArrayList<>();
        if (liquid >= 0.0005) {
            free.add(Prose.text("page.water.liquid", units.number(Measure.PIECE, liquid)));
        }
        if (ice >= 0.0005) {
            free.add(Prose.text("page.water.ice", units.number(Measure.PIECE, ice)));
        }
        return units.number(Measure.PIECE, bound + liquid + ice)
                + (free.isEmpty() ? "" : " (" + String.join(", ", free) + ")");
    }

    /** Where the water came from, where it went, and what it did. */
    static String water(NightResult result, Units units) {
        WaterReport water = result.water();
        if (water == null) {
            return "";
        }
        List<String> told = new ArrayList<>();
        if (Math.abs(water.before()) >= NOTHING) {
            told.add(Prose.text(
                    water.before() > 0 ? "page.water.before" : "page.water.before.dried",
                    units.text(Measure.LOAD, Math.abs(water.before()))));
        }
        told.add(Prose.text(
                water.fromOutside() < NOTHING ? "page.water.skin" : "page.water.outside",
                units.text(Measure.LOAD, water.fromSkin() + water.fromOutside()),
                units.text(Measure.LOAD, water.fromOutside()),
                units.text(Measure.LOAD, water.toAir()),
                water.drained() < NOTHING
                        ? ""
                        : Prose.text("page.water.drained", units.text(Measure.LOAD, water.drained()))));
        double unpacked = water.heldAtDawn()
                - water.heldAtDusk()
                - water.fromSkin()
                - water.fromOutside()
                + water.toAir()
                + water.drained();
        told.add(Prose.text(
                "page.water.held",
                units.text(Measure.LOAD, water.heldAtDusk()),
                units.text(Measure.LOAD, water.heldAtDawn()),
                unpacked < NOTHING ? "" : Prose.text("page.water.unpacked", units.text(Measure.LOAD, unpacked))));
        told.add(cost(result, water.cost(), units));
        return String.join(" ", told);
    }

    /**
     * What wetting cost. A night that stopped early has no whole bill to compare, and a difference within the error of the
     * step is none.
     */
    private static String cost(NightResult result, double cost, Units units) {
        if (!Double.isNaN(result.stopped())) {
            return Prose.text("page.water.cost.stopped");
        }
        if (Double.isNaN(cost)) {
            return Prose.text("page.water.cost.none");
        }
        String shown = units.text(Measure.HEAT, Math.abs(cost));
        if (Math.abs(cost) < Math.max(STEP_HEAT, STEP_SHARE * Math.abs(result.shortfallHeat()))) {
            return Prose.text("page.water.cost.little", units.text(Measure.HEAT, cost));
        }
        return Prose.text(cost > 0 ? "page.water.cost" : "page.water.cost.gain", shown);
    }

    /** Food as heat above rest and in pieces, what is left of the store, drink. */
    static String fuel(NightResult result, Units units) {
        FuelReport fuel = result.fuel();
        if (fuel == null) {
            return "";
        }
        List<String> told = new ArrayList<>();
        told.add(
                fuel.aboveRest() < 500
                        ? Prose.text("page.food.none")
                        : Prose.text(
                                "page.food",
                                units.text(Measure.HEAT, fuel.aboveRest()),
                                Figures.decimals(fuel.aboveRest() / PIECE, 1),
                                units.line(Measure.TURNOVER, PIECE)));
        if (fuel.eaten() > 0) {
            told.add(Prose.text("page.food.eaten", units.text(Measure.HEAT, fuel.eaten())));
        }
        told.add(Prose.text("page.food.store", percent(fuel.storeAtDusk()), percent(fuel.storeAtDawn())));
        if (fuel.lowestPeak() < 0.995) {
            told.add(Prose.text("page.food.peak", percent(fuel.lowestPeak())));
        }
        if (result.water() != null) { // without water only the breath would be counted
            told.add(Prose.text(
                    "page.drink",
                    units.text(Measure.DRINK, fuel.waterLost()),
                    fuel.sweatBefore() < 0.05
                            ? ""
                            : Prose.text("page.drink.sweat", units.text(Measure.DRINK, fuel.sweatBefore()))));
        }
        return String.join(" ", told);
    }

    private static String percent(double share) {
        return Figures.whole(100 * share);
    }

    /** When the march makes one sweat and the halt makes one cool; what a warming drill is worth. */
    static String day(NightResult result, Units units) {
        DayReport day = result.day();
        if (day == null) {
            return "";
        }
        List<String> told = new ArrayList<>();
        List<Phase> phases = result.scenario().plan().phases();
        if (phases.stream().anyMatch(phase -> phase.march() != null)) {
            String sweat = units.text(Measure.SWEAT_RATE, SWEATING);
            told.add(
                    Double.isNaN(day.sweatingAfter())
                            ? Prose.text("page.day.sweat.none", sweat)
                            : Prose.text("page.day.sweat", sweat, minutes(day.sweatingAfter())));
            told.add(
                    Double.isNaN(day.coolingAfter())
                            ? Prose.text("page.day.cooling.none")
                            : Prose.text("page.day.cooling", minutes(day.coolingAfter())));
        }
        if (!Double.isNaN(day.drillKept())) {
            told.add(Prose.text(
                    "page.drill",
                    units.text(Measure.HEAT, day.drillMade()),
                    units.text(Measure.HEAT, day.drillLost()),
                    units.text(Measure.HEAT, day.drillKept())));
            if (day.drillKept() < Figures.DEAD_BAND) {
                told.add(Prose.text("page.drill.vain"));
            }
        }
        return String.join(" ", told);
    }

    private static String minutes(double seconds) {
        return Figures.whole(seconds / 60);
    }

    /** Liquid and ice of a piece at every entry of the trace [kg]; none while it is not worn. */
    static double[] traced(WaterReport water, int piece) {
        return Arrays.stream(water.trace()[piece])
                .map(mass -> Double.isNaN(mass) ? 0 : mass)
                .toArray();
    }

    /** Whether any piece ever holds liquid or ice worth a picture. */
    static boolean isWet(NightResult result) {
        WaterReport water = result.water();
        return water != null
                && Arrays.stream(water.trace()).flatMapToDouble(Arrays::stream).anyMatch(mass -> mass > DRAWN);
    }

    /** Liquid and ice in all that is worn at a time of the trace [kg]; NaN when water was not followed. */
    static double wornAt(NightResult result, double time) {
        WaterReport water = result.water();
        if (water == null) {
            return Double.NaN;
        }
        for (int i = 0; i < water.traceTime().length; i++) {
            if (Math.abs(water.traceTime()[i] - time) < 0.5) {
                double sum = 0;
                for (int piece = 0; piece < water.trace().length; piece++) {
                    double mass = water.trace()[piece][i];
                    sum += Double.isNaN(mass) ? 0 : mass;
                }
                return sum;
            }
        }
        return Double.NaN;
    }

    /** Demand, band, bill, deficit and debt, one text each; only where something was reckoned. */
    static List<String> headlines(NightResult result, @Nullable Band band, Units units) {
        HourRow last = Wording.lastHour(result);
        String letGo = units.text(Measure.HEAT, last.letGo());
        List<String> lines = new ArrayList<>();
        lines.add(Prose.text(
                Double.isNaN(result.demand()) ? "page.demand.none" : band == null ? "page.demand" : "page.demand.band",
                Figures.decimals(result.demand(), 2),
                Figures.whole(result.restHeat()),
                Wording.clock(result, result.demandTime())));
        if (band != null) {
            lines.add(Wording.band(result, band, units));
        }
        lines.addAll(List.of(
                Prose.text(
                        "page.shortfall",
                        units.text(Measure.HEAT, result.shortfallHeat()),
                        units.text(Measure.HEAT_PER_AREA, result.shortfallHeat() / result.bodyArea()),
                        units.number(Measure.HEAT, last.paidByHeatMade()),
                        units.number(Measure.HEAT, last.paidByShell()),
                        units.text(Measure.HEAT, last.paidByCore())),
                result.coreHeatDeficitWorst() < Figures.DEAD_BAND
                        ? Prose.text("page.deficit.none", units.deadBand(), letGo)
                        : Prose.text(
                                "page.deficit",
                                units.deficit(result.coreHeatDeficitDawn()),
                                units.deficitNumber(result.coreHeatDeficitWorst()),
                                Wording.clock(result, result.worstTime()),
                                units.deadBandNumber(),
                                letGo),
                Prose.text(
                        "page.debt",
                        units.text(Measure.HEAT_PER_AREA, result.wholeBodyDebt() / result.bodyArea()),
                        units.number(Measure.HEAT_PER_AREA, ISO_11079_DEBT))));
        return lines;
    }

    /** What the kit weighs and insulates. */
    static String kit(NightResult result, Units units) {
        String clo = units.text(Measure.INSULATION, result.kitResistance());
        return Double.isNaN(result.kitMass())
                ? Prose.text("page.kit.laboratory", clo)
                : Prose.text("page.kit", units.text(Measure.LOAD, result.kitMass()), clo);
    }

    /** How well the books close. */
    static String books(NightResult result, Units units) {
        double closure = Math.max(
                result.ledger().heatClosure(),
                Math.max(result.ledger().partClosure(), result.ledger().payerClosure()));
        String water = result.water() == null
                ? ""
                : Prose.text(
                        "page.ledger.water",
                        Figures.order(units.value(Measure.LOAD, result.water().closure())),
                        units.unit(Measure.LOAD));
        return Prose.text(
                "page.ledger",
                Figures.order(closure),
                units.text(Measure.TURNOVER, result.ledger().turnedOver()),
                water);
    }

    /** What the standard says. */
    static String opinion(@Nullable SecondOpinion opinion, Units units) {
        if (opinion == null) {
            return Prose.text("page.opinion.none");
        }
        String text = Prose.text(
                "page.opinion",
                units.text(Measure.HEAT_FLUX, opinion.heat()),
                units.text(Measure.TEMPERATURE, opinion.airCelsius()),
                units.text(Measure.WIND, opinion.wind()),
                units.text(Measure.INSULATION, opinion.requiredMinimal()),
                units.number(Measure.INSULATION, opinion.requiredNeutral()),
                units.number(Measure.INSULATION, opinion.available()),
                hours(opinion.exposureMinimal()),
                hours(opinion.exposureNeutral()));
        return opinion.insideRange() ? text : text + " " + Prose.text("page.opinion.outside");
    }

    private static String hours(double hours) {
        return Double.isFinite(hours) ? Figures.decimals(hours, 1) + " h" : Prose.text("page.opinion.unlimited");
    }
}
