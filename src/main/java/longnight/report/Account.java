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

    private Account() {}

    /** Everything there is to tell, in up to three paragraphs. */
    static List<String> of(NightResult result) {
        List<String> told = Wording.hasRun(result)
                ? List.of(plan(result) + " " + day(result), pieces(result) + " " + water(result), fuel(result))
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
                .map(phase -> Wording.clock(result, phase.from()) + " " + phase.name())
                .collect(Collectors.joining(", "));
        return Prose.text("page.plan", phases, Wording.clock(result, plan.duration()), Wording.clock(result, 0));
    }

    /** What each piece held at dusk and holds at the end. */
    static String pieces(NightResult result) {
        WaterReport water = result.water();
        if (water == null) {
            return "";
        }
        String pieces = water.layers().stream()
                .filter(Account::isTold)
                .map(piece -> piece.id() + " " + held(piece.boundAtDusk(), piece.liquidAtDusk(), piece.iceAtDusk())
                        + " -> " + held(piece.boundAtDawn(), piece.liquidAtDawn(), piece.iceAtDawn()))
                .collect(Collectors.joining("; "));
        return pieces.isEmpty() ? Prose.text("page.water.pieces.none") : Prose.text("page.water.pieces", pieces);
    }

    private static boolean isTold(WaterReport.Layer piece) {
        double dusk = piece.liquidAtDusk() + piece.iceAtDusk();
        double dawn = piece.liquidAtDawn() + piece.iceAtDawn();
        double change = dawn + piece.boundAtDawn() - dusk - piece.boundAtDusk();
        return Math.abs(change) > CHANGED || Math.max(dusk, dawn) > WET;
    }

    /** "92 (60 liquid, 18 ice)", in grams. */
    private static String held(double bound, double liquid, double ice) {
        List<String> free = new ArrayList<>();
        if (liquid >= 0.0005) {
            free.add(Prose.text("page.water.liquid", grams(liquid)));
        }
        if (ice >= 0.0005) {
            free.add(Prose.text("page.water.ice", grams(ice)));
        }
        return grams(bound + liquid + ice) + (free.isEmpty() ? "" : " (" + String.join(", ", free) + ")");
    }

    private static String grams(double mass) {
        return Figures.whole(mass * 1e3);
    }

    /** Where the water came from, where it went, and what it did. */
    static String water(NightResult result) {
        WaterReport water = result.water();
        if (water == null) {
            return "";
        }
        List<String> told = new ArrayList<>();
        if (Math.abs(water.before()) >= NOTHING) {
            told.add(Prose.text(
                    water.before() > 0 ? "page.water.before" : "page.water.before.dried",
                    kilograms(Math.abs(water.before()))));
        }
        told.add(Prose.text(
                water.fromOutside() < NOTHING ? "page.water.skin" : "page.water.outside",
                kilograms(water.fromSkin() + water.fromOutside()),
                kilograms(water.fromOutside()),
                kilograms(water.toAir()),
                water.drained() < NOTHING ? "" : Prose.text("page.water.drained", kilograms(water.drained()))));
        double unpacked = water.heldAtDawn()
                - water.heldAtDusk()
                - water.fromSkin()
                - water.fromOutside()
                + water.toAir()
                + water.drained();
        told.add(Prose.text(
                "page.water.held",
                kilograms(water.heldAtDusk()),
                kilograms(water.heldAtDawn()),
                unpacked < NOTHING ? "" : Prose.text("page.water.unpacked", kilograms(unpacked))));
        told.add(cost(result, water.cost()));
        return String.join(" ", told);
    }

    /**
     * What wetting cost. A night that stopped early has no whole bill to compare, and a difference within the error of the
     * step is none.
     */
    private static String cost(NightResult result, double cost) {
        if (!Double.isNaN(result.stopped())) {
            return Prose.text("page.water.cost.stopped");
        }
        if (Double.isNaN(cost)) {
            return Prose.text("page.water.cost.none");
        }
        String shown = Figures.kilojoules(Math.abs(cost));
        if (Math.abs(cost) < Math.max(STEP_HEAT, STEP_SHARE * Math.abs(result.shortfallHeat()))) {
            return Prose.text("page.water.cost.little", Figures.kilojoules(cost));
        }
        return Prose.text(cost > 0 ? "page.water.cost" : "page.water.cost.gain", shown);
    }

    private static String kilograms(double mass) {
        return Figures.decimals(mass, 2);
    }

    /** Food as heat above rest and in pieces, what is left of the store, drink. */
    static String fuel(NightResult result) {
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
                                Figures.kilojoules(fuel.aboveRest()),
                                Figures.decimals(fuel.aboveRest() / PIECE, 1)));
        if (fuel.eaten() > 0) {
            told.add(Prose.text("page.food.eaten", Figures.kilojoules(fuel.eaten())));
        }
        told.add(Prose.text("page.food.store", percent(fuel.storeAtDusk()), percent(fuel.storeAtDawn())));
        if (fuel.lowestPeak() < 0.995) {
            told.add(Prose.text("page.food.peak", percent(fuel.lowestPeak())));
        }
        if (result.water() != null) { // without water only the breath would be counted
            told.add(Prose.text(
                    "page.drink",
                    Figures.decimals(fuel.waterLost(), 1),
                    fuel.sweatBefore() < 0.05
                            ? ""
                            : Prose.text("page.drink.sweat", Figures.decimals(fuel.sweatBefore(), 1))));
        }
        return String.join(" ", told);
    }

    private static String percent(double share) {
        return Figures.whole(100 * share);
    }

    /** When the march makes one sweat and the halt makes one cool; what a warming drill is worth. */
    static String day(NightResult result) {
        DayReport day = result.day();
        if (day == null) {
            return "";
        }
        List<String> told = new ArrayList<>();
        List<Phase> phases = result.scenario().plan().phases();
        if (phases.stream().anyMatch(phase -> phase.march() != null)) {
            told.add(
                    Double.isNaN(day.sweatingAfter())
                            ? Prose.text("page.day.sweat.none")
                            : Prose.text("page.day.sweat", minutes(day.sweatingAfter())));
            told.add(
                    Double.isNaN(day.coolingAfter())
                            ? Prose.text("page.day.cooling.none")
                            : Prose.text("page.day.cooling", minutes(day.coolingAfter())));
        }
        if (!Double.isNaN(day.drillKept())) {
            told.add(Prose.text(
                    "page.drill",
                    Figures.kilojoules(day.drillMade()),
                    Figures.kilojoules(day.drillLost()),
                    Figures.kilojoules(day.drillKept())));
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
    static List<String> headlines(NightResult result, @Nullable Band band) {
        HourRow last = Wording.lastHour(result);
        String letGo = Figures.kilojoules(last.letGo());
        List<String> lines = new ArrayList<>();
        lines.add(Prose.text(
                Double.isNaN(result.demand()) ? "page.demand.none" : band == null ? "page.demand" : "page.demand.band",
                Figures.decimals(result.demand(), 2),
                Figures.whole(result.restHeat()),
                Wording.clock(result, result.demandTime())));
        if (band != null) {
            lines.add(Wording.band(result, band));
        }
        lines.addAll(List.of(
                Prose.text(
                        "page.shortfall",
                        Figures.kilojoules(result.shortfallHeat()),
                        Figures.kilojoules(result.shortfallHeat() / result.bodyArea()),
                        Figures.kilojoules(last.paidByHeatMade()),
                        Figures.kilojoules(last.paidByShell()),
                        Figures.kilojoules(last.paidByCore())),
                result.coreHeatDeficitWorst() < Figures.DEAD_BAND
                        ? Prose.text("page.deficit.none", letGo)
                        : Prose.text(
                                "page.deficit",
                                Figures.deficit(result.coreHeatDeficitDawn()),
                                Figures.deficit(result.coreHeatDeficitWorst()),
                                Wording.clock(result, result.worstTime()),
                                letGo),
                Prose.text("page.debt", Figures.kilojoules(result.wholeBodyDebt() / result.bodyArea()))));
        return lines;
    }

    /** What the kit weighs and insulates. */
    static String kit(NightResult result) {
        String clo = Figures.clo(result.kitResistance());
        return Double.isNaN(result.kitMass())
                ? Prose.text("page.kit.laboratory", clo)
                : Prose.text("page.kit", Figures.decimals(result.kitMass(), 2), clo);
    }

    /** How well the books close. */
    static String books(NightResult result) {
        double closure = Math.max(
                result.ledger().heatClosure(),
                Math.max(result.ledger().partClosure(), result.ledger().payerClosure()));
        String water = result.water() == null
                ? ""
                : Prose.text("page.ledger.water", Figures.order(result.water().closure()));
        return Prose.text(
                "page.ledger",
                Figures.order(closure),
                Figures.decimals(result.ledger().turnedOver() / 1e6, 1),
                water);
    }

    /** What the standard says. */
    static String opinion(@Nullable SecondOpinion opinion) {
        if (opinion == null) {
            return Prose.text("page.opinion.none");
        }
        String text = Prose.text(
                "page.opinion",
                Figures.whole(opinion.heat()),
                Figures.decimals(opinion.airCelsius(), 1),
                Figures.decimals(opinion.wind(), 1),
                Figures.clo(opinion.requiredMinimal()),
                Figures.clo(opinion.requiredNeutral()),
                Figures.clo(opinion.available()),
                hours(opinion.exposureMinimal()),
                hours(opinion.exposureNeutral()));
        return opinion.insideRange() ? text : text + " " + Prose.text("page.opinion.outside");
    }

    private static String hours(double hours) {
        return Double.isFinite(hours) ? Figures.decimals(hours, 1) + " h" : Prose.text("page.opinion.unlimited");
    }
}
