package longnight.night;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import longnight.DocTable;
import longnight.body.Person;
import longnight.clothing.Fabric;
import longnight.clothing.FaceTightness;
import longnight.clothing.Fill;
import longnight.clothing.Garment;
import longnight.clothing.GarmentKind;
import longnight.clothing.GarmentSpec;
import longnight.clothing.Garments;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.figure.BodySegment;
import longnight.figure.Posture;
import longnight.outdoors.Ground;
import longnight.outdoors.Weather;
import longnight.quantity.Dimension;
import longnight.quantity.Quantities;
import longnight.study.ColdSearch;
import longnight.study.Line;
import org.junit.jupiter.api.Test;

/**
 * Rules of the trade on whole nights: common practice, no source. Strict ones are asserted here; where a rule only asks for
 * figures they stand in docs/trade-checks.md, which this class writes and holds against itself. Rules that cloth alone
 * decides are in the clothing room's tests of the same name.
 */
class TradeNightsTest {

    private static final Posture SITTING = Posture.SITTING_KNEES_UP;
    private static final double[] LINES = {2.0, 1.5};
    private static final Ground SNOW = Nights.SNOW;

    // --- Nights ---

    /** Where and when; everything but who wears what. */
    private record Night(Weather weather, double roughness, double skyGap, Ground ground, double hours) {
        Scenario scenario(Person person, Outfit kit) {
            return Nights.scenario(
                    person,
                    kit,
                    Nights.outdoors(Nights.site(roughness, 1, skyGap, ground), weather, SITTING),
                    SITTING,
                    hours);
        }

        NightResult run(Person person, Outfit kit) {
            return NightEngine.run(scenario(person, kit), NumericalSettings.standard());
        }

        NightResult run(Outfit kit) {
            return run(Nights.man(), kit);
        }
    }

    /** Eight hours at one temperature, overcast, almost no wind. */
    private static Night still(double air) {
        return new Night(Nights.weather(air, air, 1, 1, 0.8, 8), 0.02, 1, Nights.WET_SOIL, 8);
    }

    private static final Night RIME_CLOUD =
            new Night(Nights.weather(-3.2, -4.5, 12.5, 1, 0.97, 12), 0.005, 1, SNOW, 12);
    private static final Night FOREST = new Night(Nights.weather(-9, -10.8, 2.5, 1, 0.9, 12), 0.3, 0.3, SNOW, 12);
    private static final Night PLATEAU = new Night(Nights.weather(-13.5, -24.4, 1.5, 0, 0.8, 12), 0.005, 1, SNOW, 12);
    private static final Night GALE = new Night(Nights.weather(-17.5, -22.1, 14, 0.45, 0.8, 12), 0.005, 1, SNOW, 12);
    private static final Night DEAD_CALM = new Night(Nights.weather(-20, -20, 0, 1, 0.8, 12), 0.005, 1, SNOW, 12);

    /** Largest mean of losses over 4 h [W]. */
    private static double watts(NightResult night) {
        return night.demand() * night.restHeat();
    }

    // --- Kits ---

    private static Outfit.Kit without(Outfit.Kit kit, String... ids) {
        List<Garment> pieces = new ArrayList<>(kit.pieces());
        assertThat(pieces.removeIf(g -> Set.of(ids).contains(g.spec().id()))).isTrue();
        return new Outfit.Kit(pieces, kit.pads());
    }

    private static Outfit.Kit with(Outfit.Kit kit, String id, Garment piece) {
        List<Garment> pieces = new ArrayList<>(kit.pieces());
        pieces.replaceAll(g -> g.spec().id().equals(id) ? piece : g);
        assertThat(pieces).contains(piece);
        return new Outfit.Kit(pieces, kit.pads());
    }

    private static Garment find(Outfit.Kit kit, String id) {
        return kit.pieces().stream()
                .filter(g -> g.spec().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Town and cool nights: a 60 g/m2 parka over base and wind layer, nothing more on legs and hands. */
    private static Outfit.Kit cool() {
        return with(without(Nights.typical(), "vest", "overtrousers", "mitts"), "parka", Nights.parka(60));
    }

    private static Garment parka(double kg, Fill fill, Double room, GarmentSpec.Finish finish) {
        return derived("parka", kg, fill, true, room, finish).garment();
    }

    private static Garments.Derived derived(
            String id, double kg, Fill fill, boolean hooded, Double room, GarmentSpec.Finish finish) {
        return Garments.derive(new GarmentSpec(
                id,
                id,
                GarmentKind.PARKA,
                kg,
                Fabric.NYLON_WOVEN,
                fill,
                FaceTightness.TIGHT,
                hooded,
                null,
                room,
                null,
                null,
                null,
                null,
                finish,
                null,
                null));
    }

    // --- how cold for the 60, the 100 and the heavy kit ---

    private static Map<String, Outfit.Kit> ladder() {
        Map<String, Outfit.Kit> kits = new LinkedHashMap<>();
        kits.put("60 g/m² parka over base and wind layer", cool());
        kits.put("60 g/m² parka in the typical kit", with(Nights.typical(), "parka", Nights.parka(60)));
        kits.put("typical kit, 100 g/m² parka", Nights.typical());
        kits.put("heavy kit, 130 g/m² parka (230 on chest and back)", Nights.heavy());
        return kits;
    }

    /** Air temperature of the still night at which the kit's demand reaches the line [degC]. */
    private static double temperatureAt(Outfit.Kit kit, double line) {
        return new ColdSearch(
                        still(0).scenario(Nights.man(), kit),
                        new Line(Line.Measure.DEMAND, line),
                        NumericalSettings.standard())
                .limit(ModelChoice.nominal())
                .air()
                .mean();
    }

    /** Notes: each heavier class goes colder; R-05's size, 6 to 12 K with 4 K to spare. */
    @Test
    void heavierBattGoesColder() {
        for (double line : LINES) {
            double cool = temperatureAt(cool(), line);
            double typical = temperatureAt(Nights.typical(), line);
            double heavy = temperatureAt(Nights.heavy(), line);
            assertThat(typical).isLessThan(temperatureAt(with(Nights.typical(), "parka", Nights.parka(60)), line));
            assertThat(cool - typical).isBetween(6.0 - 4, 12.0 + 4);
            assertThat(heavy).isLessThan(typical);
        }
    }

    // --- the unit trap ---

    private static final List<String> ACCEPTED = List.of("100 g/m2", "3 oz/yd2");
    private static final List<String> REFUSED = List.of("3 oz", "100 g", "100");

    @Test
    void battNeedsAMassPerArea() {
        assertThat(REFUSED).noneMatch(text -> Quantities.isA(text, Dimension.AREAL_MASS));
        assertThat(1000 * Quantities.parse(ACCEPTED.get(0), Dimension.AREAL_MASS))
                .isCloseTo(100.0, within(0.1));
        assertThat(1000 * Quantities.parse(ACCEPTED.get(1), Dimension.AREAL_MASS))
                .isCloseTo(101.7, within(0.1));
    }

    // --- a shell over fleece ---

    private static Outfit.Kit fleece(boolean shell) {
        Garment fleece = Nights.piece("fleece", GarmentKind.MID_TOP, 315, Fabric.FLEECE, null, null);
        Outfit.Kit kit = with(without(Nights.typical(), "parka"), "vest", fleece);
        // the shell goes over the fleece
        List<Garment> pieces = new ArrayList<>(without(kit, "wind jacket").pieces());
        if (shell) {
            pieces.add(find(kit, "wind jacket"));
        }
        return new Outfit.Kit(pieces, kit.pads());
    }

    private static double shellSaves(Night night) {
        return watts(night.run(fleece(false))) - watts(night.run(fleece(true)));
    }

    @Test
    void fleeceNeedsAShellInWind() {
        double calm = shellSaves(PLATEAU);
        assertThat(calm).isPositive();
        assertThat(shellSaves(GALE) / calm).isGreaterThan(2);
    }

    // --- parka size ---

    private static final double[] ROOMS = {0.005, 0.035, 0.080};

    private static double roomy(Night night, double room) {
        Garment parka = parka(0.44, Nights.batt(100), room, GarmentSpec.Finish.NEW);
        return watts(night.run(with(Nights.typical(), "parka", parka)));
    }

    /** In a gale the tight parka loses by crushing what is under it, the loose one by draught. */
    @Test
    void moderateEaseIsBestInAGale() {
        double moderate = roomy(GALE, ROOMS[1]);
        assertThat(roomy(GALE, ROOMS[0])).isGreaterThan(1.01 * moderate);
        assertThat(roomy(GALE, ROOMS[2])).isGreaterThan(1.01 * moderate);
    }

    /** In dead calm no draught: the permeability law itself moves by 0.3 % at rest, no more. */
    @Test
    void looseParkaCostsNothingInCalm() {
        double moderate = roomy(DEAD_CALM, ROOMS[1]);
        assertThat(roomy(DEAD_CALM, ROOMS[0])).isGreaterThan(1.01 * moderate);
        assertThat(roomy(DEAD_CALM, ROOMS[2])).isCloseTo(moderate, within(0.005 * moderate));
    }

    // --- an old surplus parka ---

    private static double surplus(Night night, double kg, GarmentSpec.Finish finish) {
        Garment parka = parka(kg, Nights.batt(130), null, finish);
        return watts(night.run(with(Nights.typical(), "parka", parka)));
    }

    @Test
    void heavyWornParkaIsAsWarmAsNewWhenDry() {
        for (Night night : List.of(FOREST, GALE)) {
            double fresh = surplus(night, 0.55, GarmentSpec.Finish.NEW);
            assertThat(surplus(night, 0.55, GarmentSpec.Finish.GONE)).isEqualTo(fresh);
            // a kilogram of cloth more in the same cut: "similar" is a twentieth of the losses, and no colder
            assertThat(surplus(night, 1.6, GarmentSpec.Finish.GONE)).isBetween(0.95 * fresh, fresh);
        }
    }

    // --- sit on something ---

    private static Outfit.Kit on(Pad... pads) {
        return new Outfit.Kit(Nights.typical().pieces(), List.of(pads));
    }

    private static List<Outfit.Kit> seats() {
        return List.of(on(), Nights.typical(), on(Nights.heavy().pads().get(0)));
    }

    @Test
    void nothingThenPadThenMat() {
        for (Night night : List.of(RIME_CLOUD, FOREST)) {
            List<NightResult> runs = seats().stream().map(night::run).toList();
            for (Function<NightResult, Double> bill :
                    List.<Function<NightResult, Double>>of(NightResult::demand, NightResult::shortfallHeat)) {
                assertThat(bill.apply(runs.get(0))).isGreaterThan(bill.apply(runs.get(1)));
                assertThat(bill.apply(runs.get(1))).isGreaterThan(bill.apply(runs.get(2)));
            }
        }
    }

    // --- cap and hood ---

    private static double headShare(NightResult night) {
        double all = 0;
        for (double way : night.ledger().lostByWay()) {
            all += way;
        }
        return night.ledger().lostByPart()[BodySegment.HEAD.ordinal()] / all;
    }

    @Test
    void mostHeatDoesNotLeaveByTheHead() {
        for (Night night : List.of(FOREST, PLATEAU, GALE)) {
            assertThat(headShare(night.run(Nights.heavy()))).isBetween(0.01, 0.25);
        }
    }

    /** The heavy parka without its hood: the same cloth and fill per area, so lighter by the hood. */
    private static Garment hoodless() {
        GarmentSpec spec = find(Nights.heavy(), "heavy parka").spec();
        Fill fill = spec.fill();
        double whole = area(derived("heavy parka", spec.mass(), fill, true, null, spec.condition()));
        double less = area(derived("heavy parka", spec.mass(), fill, false, null, spec.condition()));
        return derived("heavy parka", spec.mass() * less / whole, fill, false, null, spec.condition())
                .garment();
    }

    private static double area(Garments.Derived piece) {
        return piece.guesses().stream()
                .filter(g -> g.quantity().equals("area of the piece"))
                .findFirst()
                .orElseThrow()
                .value();
    }

    // --- people ---

    private static List<Person> people() {
        return List.of(
                Nights.man(),
                new Person("B2", Person.Sex.FEMALE, 34, 1.65, 58, 24, 42, 1),
                new Person("B3", Person.Sex.MALE, 61, 1.76, 84, 27, 32, 1),
                new Person("B4", Person.Sex.FEMALE, 19, 1.60, 51, 19, 40, 1),
                new Person("B5", Person.Sex.MALE, 40, 1.86, 102, 30, 34, 1),
                new Person("B6", Person.Sex.MALE, 16, 1.76, 60, 10, 52, 1));
    }

    // --- The page ---

    private final StringBuilder table = new StringBuilder();

    private void row(String note, String rule, String figures, String held) {
        table.append("| ").append(String.join(" | ", note, rule, figures, held)).append(" |\n");
    }

    private static String held(boolean held, String otherwise) {
        return held ? "held" : "**not held**: " + otherwise;
    }

    private static String format(String pattern, Object... values) {
        return DocTable.format(pattern, values);
    }

    @Test
    void page() {
        clothAlone();
        String ladder = ladderTable();
        units();
        vestOrBiggerParka();
        shellOverFleece();
        parkaSize();
        String legs = legsTable();
        downTrousers();
        surplusParka();
        String people = peopleTable();
        seat();
        String head = headTable();
        DocTable.check("docs/trade-checks.md", format(PAGE, table, ladder, legs, people, head));
    }

    private static final String PAGE = """
            # Rules of the trade, held against whole nights

            People who spend nights out have rules about clothes. They are common practice without a source, and where the
            engine's physics says otherwise this page says so. The figures are written by a test and the build fails when
            they are stale. No rain, snow or march here, only vapour and what it leaves in the cloth; for those see
            [trade-checks-wet.md](trade-checks-wet.md).

            "W" is the largest mean of losses over 4 h of the night; "demand" is that over the person's heat at rest. Unless
            it says otherwise the person is a man of 78 kg and 1.80 m, sitting. The nights are invented: *still* (8 h at one
            temperature, overcast, 1 m/s at 10 m), *rime cloud* (-3 to -5 °C, 12.5 m/s, overcast), *forest* (-9 to -11 °C, 2.5 m/s,
            overcast, under trees), *plateau* (-14 to -24 °C, 1.5 m/s, clear), *gale* (-18 to -22 °C, 14 m/s, broken cloud).

            | note | rule | figures | held? |
            |---|---|---|---|
            %s
            ## How cold for which batt (R-04, R-05, R-06)

            Still night of 8 h; the air temperature at which the demand reaches a line.

            | kit | demand 2.0 | demand 1.5 |
            |---|---:|---:|
            %s
            ## Legs or more on the torso (R-20)

            The typical kit without overtrousers, on still nights, and what the overtrousers (80 g/m²) or the same mass of
            thicker batt in the parka take off.

            | air [°C] | overtrousers [W per 100 g] | torso [W per 100 g] | overtrousers [kJ in 8 h] | torso [kJ in 8 h] |
            |---:|---:|---:|---:|---:|
            %s
            ## People against parkas (R-29)

            Forest night, typical kit.

            | who, or which parka | demand | shortfall heat [kJ] |
            |---|---:|---:|
            %s
            ## Cap and hood (R-33)

            Heavy kit in the forest; what each piece takes off when the rest stays on. The hood's mass is its share of the
            parka's area.

            | piece | mass [g] | W | W per 100 g |
            |---|---:|---:|---:|
            %s""";

    private void clothAlone() {
        String there = "checked on the cloth alone, in the clothing room's `TradeRulesTest`";
        row("R-01", "Fill power is an efficiency, not a warmth.", there, "held");
        row("R-02", "More of a middling down beats little of the best.", there, "held");
        row("R-03", "Sewn down keeps a share of its loft.", there + "; told among the guesses of every result", "held");
        row("R-17", "A heavier face is tougher and heavier, not warmer.", there, "held");
        row("R-18", "Cold seams cost more than the mean fill says.", there, "held");
    }

    private String ladderTable() {
        StringBuilder rows = new StringBuilder();
        List<double[]> found = new ArrayList<>();
        ladder().forEach((name, kit) -> {
            double[] t = {temperatureAt(kit, LINES[0]), temperatureAt(kit, LINES[1])};
            found.add(t);
            rows.append(format("| %s | %.1f °C | %.1f °C |\n", name, t[0], t[1]));
        });
        double cool = found.get(0)[0];
        double typical = found.get(2)[0];
        double heavy = found.get(3)[0];
        row(
                "R-04",
                "60 g/m² is for town and nights above freezing: enough at +2 to +8 °C, not at -10 °C.",
                format(
                        "demand 2.0 at %.1f °C; at -10 °C demand %.2f",
                        cool, still(-10).run(cool()).demand()),
                held(
                        cool >= 2 - 5 && cool <= 8 + 5 && cool > -10,
                        "the temperature lies more than 5 K outside the rule's."));
        row(
                "R-05",
                "100 g/m² reaches below freezing, 6 to 12 K colder than 60, give or take 4 (here with vest, overtrousers and mitts).",
                format("%.1f K colder at demand 2.0, %.1f K at 1.5", cool - typical, found.get(0)[1] - found.get(2)[1]),
                held(
                                cool - typical >= 6 - 4 && cool - typical <= 12 + 4,
                                "the size is off by more than the 4 K the rule allows.")
                        + format(
                                "; but the other pieces do most of it: the batt alone makes %.1f K",
                                found.get(1)[0] - typical));
        row(
                "R-06",
                "130 g/m² and more, rightly layered, goes into deep cold.",
                format("demand 2.0 at %.1f °C, %.1f K below the 100 class", heavy, typical - heavy),
                held(heavy < typical, "it goes no colder."));
        return rows.toString();
    }

    private void units() {
        row(
                "R-07",
                "\"3 oz\", \"100 g\" and \"100\" of batt can mean two things.",
                format(
                        "refused with both readings; 100 g/m2 is %.1f and 3 oz/yd2 is %.1f g/m²",
                        1000 * Quantities.parse(ACCEPTED.get(0), Dimension.AREAL_MASS),
                        1000 * Quantities.parse(ACCEPTED.get(1), Dimension.AREAL_MASS)),
                held(
                        REFUSED.stream().noneMatch(text -> Quantities.isA(text, Dimension.AREAL_MASS)),
                        "an unclear batt is let in."));
    }

    private void vestOrBiggerParka() {
        Outfit.Kit both = Nights.typical();
        Outfit.Kit neither = without(both, "vest");
        Outfit.Kit bigger = with(neither, "parka", find(Nights.heavy(), "heavy parka"));
        NightResult r = FOREST.run(both);
        NightResult n = FOREST.run(neither);
        NightResult b = FOREST.run(bigger);
        double apart = Math.abs(watts(r) / watts(b) - 1);
        row(
                "R-14",
                "A vest under a big parka is about as warm as a bigger parka alone.",
                format(
                        "forest: parka %.0f W; with vest %.0f W for %.0f g more; bigger parka alone %.0f W for %.0f g more",
                        watts(n),
                        watts(r),
                        1000 * (r.kitMass() - n.kitMass()),
                        watts(b),
                        1000 * (b.kitMass() - n.kitMass())),
                held(
                        apart < 0.05,
                        format(
                                "they lie %.0f %% apart, and the bigger parka is %s.",
                                100 * apart, watts(b) < watts(r) ? "warmer" : "colder")));
    }

    private void shellOverFleece() {
        double calm = shellSaves(PLATEAU);
        double gale = shellSaves(GALE);
        row(
                "R-16",
                "Fleece needs a shell in wind.",
                format(
                        "a wind jacket over fleece saves %.0f W on the plateau, %.0f W in the gale: %.2f times",
                        calm, gale, gale / calm),
                held(gale / calm > 2, "the shell saves less than twice as much in the gale."));
    }

    private void parkaSize() {
        DoubleUnaryOperator gale = room -> roomy(GALE, room);
        double tight = gale.applyAsDouble(ROOMS[0]);
        double moderate = gale.applyAsDouble(ROOMS[1]);
        double loose = gale.applyAsDouble(ROOMS[2]);
        row(
                "R-19",
                "A parka goes over everything with room to spare: tight crushes, loose lets the wind in.",
                format("gale, room 5 / 35 / 80 mm: %.0f / %.0f / %.0f W", tight, moderate, loose),
                held(moderate < tight && moderate < loose, "the best room is not the moderate one."));
    }

    private String legsTable() {
        Outfit.Kit none = without(Nights.typical(), "overtrousers");
        double grams = 1000 * find(Nights.typical(), "overtrousers").spec().mass();
        // Fill alone, at the same 1.4 m2 by which the fixture's parkas gain mass with their batt.
        Outfit.Kit torso = with(none, "parka", Nights.parka(100 + grams / 1.4));
        StringBuilder rows = new StringBuilder();
        String crossing = "";
        String crossingHeat = "";
        double before = 0;
        boolean grows = true;
        double[] air = {5, 0, -5, -10, -20};
        boolean[] legsLead = new boolean[air.length];
        boolean[] legsLeadHeat = new boolean[air.length];
        for (int i = 0; i < air.length; i++) {
            NightResult n = still(air[i]).run(none);
            NightResult l = still(air[i]).run(Nights.typical());
            NightResult t = still(air[i]).run(torso);
            assertThat(t.kitMass()).isCloseTo(l.kitMass(), within(1e-9));
            double legs = watts(n) - watts(l);
            double more = watts(n) - watts(t);
            double legsHeat = (n.shortfallHeat() - l.shortfallHeat()) / 1000;
            double moreHeat = (n.shortfallHeat() - t.shortfallHeat()) / 1000;
            rows.append(format(
                    "| %.0f | %.1f | %.1f | %.0f | %.0f |\n",
                    air[i], 100 * legs / grams, 100 * more / grams, legsHeat, moreHeat));
            grows &= legs > before;
            before = legs;
            legsLead[i] = legs > more;
            legsLeadHeat[i] = legsHeat > moreHeat;
            if (i > 0 && legsLead[i] && !legsLead[i - 1]) {
                crossing = format("%.0f and %.0f °C", air[i], air[i - 1]);
            }
            if (i > 0 && legsLeadHeat[i] != legsLeadHeat[i - 1]) {
                crossingHeat = format("%.0f and %.0f °C", air[i], air[i - 1]);
            }
        }
        row(
                "R-20",
                "Below freezing insulated trousers; above it tights do: per gram, legs overtake the torso somewhere below zero.",
                format(
                        "benefit %s with cold; legs overtake by W: %s",
                        grows ? "grows" : "does not grow", crossing.isEmpty() ? "nowhere" : "between " + crossing),
                held(
                        !crossing.isEmpty(),
                        "by W the legs lead "
                                + (legsLead[0] && legsLead[air.length - 1]
                                        ? "at every temperature tried"
                                        : "on one side only")
                                + (crossingHeat.isEmpty()
                                        ? "."
                                        : "; by heat over the whole night the lead changes hands between "
                                                + crossingHeat + ", in the cold to the "
                                                + (legsLeadHeat[air.length - 1] ? "legs" : "torso"))
                                + "; the rule may be about walking, which a night of sitting cannot tell."));
        return rows.toString();
    }

    /** Down trousers of 195 g with 75 g of down, in place of the typical kit's, and what each piece takes off per gram. */
    private void downTrousers() {
        Garment down = Nights.piece(
                "overtrousers",
                GarmentKind.INSULATED_TROUSERS,
                195,
                Fabric.NYLON_WOVEN,
                Nights.down(75, 850),
                FaceTightness.TIGHT);
        Outfit.Kit kit = with(Nights.typical(), "overtrousers", down);
        StringBuilder figures = new StringBuilder();
        int worst = 0;
        for (Night night : List.of(FOREST, PLATEAU)) {
            double whole = watts(night.run(kit));
            Map<String, Double> saves = new LinkedHashMap<>();
            for (Garment piece : kit.pieces()) {
                double saved = watts(night.run(without(kit, piece.spec().id()))) - whole;
                saves.put(piece.spec().id(), 0.1 * saved / piece.spec().mass());
            }
            List<String> order = saves.keySet().stream()
                    .sorted(Comparator.comparingDouble((String id) -> -saves.get(id)))
                    .toList();
            int place = 1 + order.indexOf("overtrousers");
            worst = Math.max(worst, place);
            figures.append(format(
                    "%s%s %.1f W per 100 g, place %d of %d, %s %.1f",
                    figures.isEmpty() ? "" : "; ",
                    night == FOREST ? "forest" : "plateau",
                    saves.get("overtrousers"),
                    place,
                    order.size(),
                    place == 1 ? "next " + order.get(1) : "first " + order.get(0),
                    saves.get(order.get(place == 1 ? 1 : 0))));
        }
        row(
                "R-22",
                "Light down trousers weigh next to nothing for what they save: among the best three per gram when dry.",
                figures.toString(),
                held(worst <= 3, "others save more per gram."));
    }

    private void surplusParka() {
        double fresh = surplus(FOREST, 0.55, GarmentSpec.Finish.NEW);
        double old = surplus(FOREST, 1.6, GarmentSpec.Finish.GONE);
        row(
                "R-28",
                "An old surplus parka, heavy and its finish gone, is as warm as a new one while dry.",
                format("forest: new, 0.55 kg %.1f W; old, 1.6 kg %.1f W", fresh, old),
                held(Math.abs(old / fresh - 1) < 0.05, "they differ by more than a twentieth."));
    }

    private String peopleTable() {
        StringBuilder rows = new StringBuilder();
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (Person p : people()) {
            NightResult r = FOREST.run(p, Nights.typical());
            least = Math.min(least, r.demand());
            most = Math.max(most, r.demand());
            rows.append(format(
                    "| %s of %.0f, %.2f m, %.0f kg, %.0f %% fat | %.2f | %.0f |\n",
                    p.sex() == Person.Sex.MALE ? "man" : "woman",
                    p.age(),
                    p.height(),
                    p.mass(),
                    p.bodyFat(),
                    r.demand(),
                    r.shortfallHeat() / 1000));
        }
        double[] batts = {60, 100, 130, 200};
        double[] demand = new double[batts.length];
        double step = 0;
        for (int i = 0; i < batts.length; i++) {
            NightResult r = FOREST.run(with(Nights.typical(), "parka", Nights.parka(batts[i])));
            demand[i] = r.demand();
            step = i == 0 ? 0 : Math.max(step, demand[i - 1] - demand[i]);
            rows.append(format(
                    "| first man, parka of %.0f g/m² | %.2f | %.0f |\n",
                    batts[i], r.demand(), r.shortfallHeat() / 1000));
        }
        row(
                "R-29",
                "People differ by more than neighbouring parkas do.",
                format(
                        "forest: six people in one kit spread over %.2f of demand; neighbouring parkas differ by at most %.2f: %.1f times",
                        most - least, step, (most - least) / step),
                held(most - least > step, "the parkas differ more."));
        return rows.toString();
    }

    private void seat() {
        StringBuilder figures = new StringBuilder("none / pad / mat:");
        boolean ordered = true;
        for (Night night : List.of(RIME_CLOUD, FOREST)) {
            double[] w =
                    seats().stream().mapToDouble(kit -> watts(night.run(kit))).toArray();
            ordered &= w[0] > w[1] && w[1] > w[2];
            figures.append(format(
                    "%s %s %.1f / %.1f / %.1f W",
                    night == FOREST ? "," : "", night == FOREST ? "forest" : "rime cloud", w[0], w[1], w[2]));
        }
        row("R-32", "Sit on something.", figures.toString(), held(ordered, "they are not ordered."));
    }

    private String headTable() {
        Outfit.Kit heavy = Nights.heavy();
        NightResult all = FOREST.run(heavy);
        Map<String, Outfit.Kit> less = new LinkedHashMap<>();
        less.put("hood of the parka and balaclava", without(with(heavy, "heavy parka", hoodless()), "balaclava"));
        less.put("hood of the parka", with(heavy, "heavy parka", hoodless()));
        less.put("balaclava", without(heavy, "balaclava"));
        less.put("vest", without(heavy, "vest"));
        less.put("heavy parka", without(heavy, "heavy parka"));
        less.put("overtrousers", without(heavy, "overtrousers"));
        less.put("mitts", without(heavy, "mitts"));
        less.put("wool tights", without(heavy, "wool tights"));
        less.put("wind jacket", without(heavy, "wind jacket"));
        StringBuilder rows = new StringBuilder();
        double head = 0;
        double best = 0;
        String bestName = "";
        for (Map.Entry<String, Outfit.Kit> e : less.entrySet()) {
            NightResult r = FOREST.run(e.getValue());
            double grams = 1000 * (all.kitMass() - r.kitMass());
            double saved = watts(r) - watts(all);
            double perGram = 100 * saved / grams;
            rows.append(format("| %s | %.0f | %.1f | %.1f |\n", e.getKey(), grams, saved, perGram));
            if (e.getKey().startsWith("hood of the parka and")) {
                head = perGram;
            } else if (perGram > best
                    && !e.getKey().equals("hood of the parka")
                    && !e.getKey().equals("balaclava")) {
                best = perGram;
                bestName = e.getKey();
            }
        }
        double share = headShare(all);
        double bare = headShare(FOREST.run(less.get("hood of the parka and balaclava")));
        row(
                "R-33",
                "Cap and hood give most for their mass; yet most heat does not leave by the head.",
                format(
                        "forest, heavy kit: %.1f W per 100 g, next %s with %.1f; the head loses %.0f %% (breath apart), with cap and hood off %.0f %%",
                        head, bestName, best, 100 * share, 100 * bare),
                held(
                        head > best && share < 0.25,
                        share < 0.25
                                ? "the head's share is small as the rule says, but the " + bestName
                                        + " gives more per gram."
                                : "the head's share is a quarter or more."));
        return rows.toString();
    }
}
