package longnight.night;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import longnight.body.Person;
import longnight.clothing.Fabric;
import longnight.clothing.FaceTightness;
import longnight.clothing.Fill;
import longnight.clothing.Garment;
import longnight.clothing.GarmentKind;
import longnight.clothing.GarmentSpec;
import longnight.clothing.Garments;
import longnight.clothing.Outfit;
import longnight.figure.Posture;
import longnight.outdoors.Ground;
import longnight.outdoors.Site;
import longnight.outdoors.Weather;

/**
 * Eight invented nights that rain, snow, rime, freeze or blow, with the afternoon before them, and what people wear and do
 * in them. Hours run from 17:00 to 09:00; dusk of the plans is 20:00, dawn 08:00.
 */
final class WetNights {

    static final double HOUR = 3600;
    static final double DUSK = 20 * HOUR;
    static final double DAWN = 12 * HOUR;
    static final Posture SITTING = Posture.SITTING_KNEES_UP;

    private static final int FIRST = -3;
    private static final int LAST = 13;
    private static final int EVERY = 4;
    private static final Ground PEAT = new Ground("soaked peat", 0.5, 3.5e6, 0.15, false);
    private static final Ground MEADOW = new Ground("frosted meadow", 0.8, 2.2e6, 0.8, false);

    private WetNights() {}

    /** A night at a place; wind at 10 m in the open. */
    record Place(String name, Weather weather, Site site) {

        /** The same with every rate of rain and snow multiplied. */
        Place raining(double factor) {
            Weather w = weather;
            double[] rate =
                    Arrays.stream(w.precipitation()).map(r -> factor * r).toArray();
            return new Place(
                    name,
                    new Weather(
                            w.time(),
                            w.airCelsius(),
                            w.relativeHumidity(),
                            w.wind10(),
                            w.cloud(),
                            rate,
                            w.pressure(),
                            w.skyLongwave()),
                    site);
        }

        /** The same in one wind [m/s]. */
        Place windy(double wind) {
            Weather w = weather;
            return new Place(
                    name,
                    new Weather(
                            w.time(),
                            w.airCelsius(),
                            w.relativeHumidity(),
                            filled(wind),
                            w.cloud(),
                            w.precipitation(),
                            w.pressure(),
                            w.skyLongwave()),
                    site);
        }

        /** The same under full cloud. */
        Place overcast() {
            Weather w = weather;
            return new Place(
                    name,
                    new Weather(
                            w.time(),
                            w.airCelsius(),
                            w.relativeHumidity(),
                            w.wind10(),
                            filled(1),
                            w.precipitation(),
                            w.pressure(),
                            w.skyLongwave()),
                    site);
        }

        Scenario scenario(Person person, Outfit outfit, NightPlan plan) {
            return new Scenario(
                    name,
                    name,
                    "kit",
                    person,
                    outfit,
                    Nights.outdoors(site, weather, SITTING),
                    plan,
                    new ArrayList<>(),
                    List.of(),
                    List.of());
        }

        NightResult run(Person person, Outfit outfit, NightPlan plan) {
            return NightEngine.compile(scenario(person, outfit, plan), ModelChoice.nominal())
                    .run(NumericalSettings.standard());
        }

        NightResult run(Outfit outfit, NightPlan plan) {
            return run(Nights.man(), outfit, plan);
        }

        NightResult run(Outfit outfit) {
            return run(Nights.man(), outfit, sit());
        }
    }

    // --- Places: values at 17:00, 21:00, 01:00, 05:00 and 09:00, straight in between ---

    static final Place RAIN = place(
            "moor in steady rain",
            series(8.2, 7.3, 6.5, 5.7, 5.3),
            series(7, 8.5, 9.1, 7.7, 6.4),
            series(0.93, 0.96, 0.95, 0.95, 0.93),
            filled(1),
            series(0.8, 2.3, 1.7, 1.2, 0.3),
            site(210, 0.05, 1, Nights.WET_SOIL));

    static final Place SLEET = place(
            "fell behind a front",
            series(3.5, 2.4, 0.7, -1.0, -2.9),
            series(8, 10.5, 12.2, 9.7, 6.9),
            series(0.94, 0.97, 0.97, 0.92, 0.77),
            series(1, 1, 1, 0.9, 0.4),
            series(1.3, 2.4, 1.7, 0.6, 0),
            site(640, 0.03, 1, PEAT));

    static final Place FROST = place(
            "valley in frost, fog late",
            series(1.6, -2.2, -4.6, -5.8, -4.7),
            series(1.7, 0.6, 0.4, 0.4, 1.0),
            series(0.80, 0.95, 0.95, 0.98, 0.85),
            series(0.1, 0, 0, 1, 0.6),
            filled(0),
            site(320, 0.1, 1, MEADOW));

    static final Place RIME = place(
            "ridge in rime cloud",
            series(-3.2, -3.8, -4.3, -4.5, -4.0),
            series(11, 12.8, 14.2, 12.8, 11.2),
            filled(0.99),
            filled(1),
            series(0.3, 0.6, 0.5, 0.3, 0.1),
            site(1150, 0.02, 1, Nights.SNOW));

    static final Place FOREST = place(
            "forest in snowfall",
            series(-9.0, -9.8, -10.3, -10.7, -10.4),
            series(2.6, 2.2, 2.7, 2.1, 2.5),
            filled(0.90),
            filled(1),
            series(0.2, 0.6, 0.6, 0.3, 0.1),
            site(480, 0.3, 0.3, Nights.SNOW));

    static final Place PLATEAU = place(
            "clear plateau",
            series(-13.5, -19.5, -22.5, -24.0, -22.6),
            series(1.8, 0.8, 0.5, 0.5, 0.9),
            series(0.70, 0.82, 0.80, 0.79, 0.66),
            filled(0),
            filled(0),
            site(820, 0.01, 1, Nights.SNOW));

    static final Place GALE = place(
            "gap in a dry gale",
            series(-17.5, -19.2, -20.8, -21.8, -21.4),
            series(12, 15.2, 17.2, 15, 12),
            filled(0.62),
            series(0.5, 0.4, 0.5, 0.4, 0.4),
            filled(0),
            site(980, 0.005, 1, Nights.SNOW));

    static final Place ICE_CAP = place(
            "ice cap",
            series(-36.0, -37.8, -39.1, -40.0, -39.6),
            series(8.2, 9.4, 10.6, 10.6, 8.8),
            filled(0.68),
            filled(0.1),
            filled(0.01),
            site(2350, 0.0005, 1, Nights.SNOW));

    private static Site site(double altitude, double roughness, double skyGap, Ground ground) {
        return new Site(altitude, roughness, 1, skyGap, 0, 0, ground);
    }

    private static Place place(
            String name, double[] air, double[] wind, double[] humidity, double[] cloud, double[] rain, Site site) {
        double[] time = new double[LAST - FIRST + 1];
        for (int i = 0; i < time.length; i++) {
            time[i] = (FIRST + i) * HOUR;
        }
        double[] unknown = filled(Double.NaN);
        return new Place(name, new Weather(time, air, humidity, wind, cloud, rain, unknown, unknown), site);
    }

    private static double[] series(double... at) {
        double[] all = new double[LAST - FIRST + 1];
        for (int i = 0; i < all.length; i++) {
            int k = Math.min(at.length - 2, i / EVERY);
            all[i] = at[k] + (at[k + 1] - at[k]) * (i - EVERY * k) / EVERY;
        }
        return all;
    }

    private static double[] filled(double value) {
        double[] all = new double[LAST - FIRST + 1];
        Arrays.fill(all, value);
        return all;
    }

    // --- Plans ---

    static final March EASY = new March(1.1, 3, 12, 1.2);
    static final March HARD = new March(0.9, 8, 18, 2.1);

    /** From dusk to dawn sitting, free to sleep. */
    static NightPlan sit() {
        return plan(List.of(still("night", 0, DAWN, null)));
    }

    /** Sitting all night after a march, both in given clothes; null for the scenario's. */
    static NightPlan after(March march, double minutes, Outfit marching) {
        return plan(List.of(walk(march, -60 * minutes, 0, marching), still("night", 0, DAWN, null)));
    }

    static Phase walk(March march, double from, double to, Outfit outfit) {
        return new Phase("march", from, to, Posture.STANDING, false, march, 0, 0, outfit, 0, 1, false);
    }

    static Phase still(String name, double from, double to, Outfit outfit) {
        return new Phase(name, from, to, SITTING, true, null, 0, 0, outfit, 0, 1, false);
    }

    static NightPlan plan(List<Phase> phases) {
        return plan(phases, Map.of(), 1);
    }

    static NightPlan plan(List<Phase> phases, Map<String, Double> damp, double fuel) {
        return new NightPlan(DUSK, DAWN, true, Double.NaN, phases, List.of(), List.of(), damp, fuel);
    }

    // --- Kits ---

    /** What a newcomer brings: cotton under a thin shell and an untreated light down jacket, nothing to sit on. */
    static Outfit.Kit cotton() {
        return Nights.kit(
                List.of(),
                Nights.piece("cotton hood", GarmentKind.MID_TOP, 465, Fabric.COTTON_KNIT, null, null),
                Nights.piece("jeans", GarmentKind.TROUSERS, 410, Fabric.COTTON_DENIM, null, null),
                Nights.windJacket(),
                find(Nights.light(), "light down jacket"),
                Nights.cap(),
                Nights.piece("cotton gloves", GarmentKind.LINER_GLOVES, 70, Fabric.COTTON_KNIT, null, null),
                Nights.piece("cotton socks", GarmentKind.SOCKS, 80, Fabric.COTTON_KNIT, null, null),
                Nights.piece("shoes", GarmentKind.SHOES, 900, null, null, null));
    }

    /** The kit without what is put on at a halt. */
    static Outfit.Kit moving(Outfit.Kit kit) {
        Set<GarmentKind> halt = Set.of(
                GarmentKind.PARKA,
                GarmentKind.INSULATED_JACKET,
                GarmentKind.INSULATED_TROUSERS,
                GarmentKind.MITTENS,
                GarmentKind.CAPE);
        return new Outfit.Kit(
                kit.pieces().stream()
                        .filter(g -> !halt.contains(g.spec().kind()))
                        .toList(),
                kit.pads());
    }

    static Garment find(Outfit.Kit kit, String id) {
        return kit.pieces().stream()
                .filter(g -> g.spec().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    static Outfit.Kit without(Outfit.Kit kit, String... ids) {
        List<Garment> pieces = new ArrayList<>(kit.pieces());
        if (!pieces.removeIf(g -> Set.of(ids).contains(g.spec().id()))) {
            throw new IllegalArgumentException("none of " + List.of(ids) + " is in the kit");
        }
        return new Outfit.Kit(pieces, kit.pads());
    }

    /** One piece replaced, at its place in the dressing order. */
    static Outfit.Kit with(Outfit.Kit kit, String id, Garment piece) {
        find(kit, id);
        List<Garment> pieces = new ArrayList<>(kit.pieces());
        pieces.replaceAll(g -> g.spec().id().equals(id) ? piece : g);
        return new Outfit.Kit(pieces, kit.pads());
    }

    /** One piece more, over all others of the body. */
    static Outfit.Kit over(Outfit.Kit kit, Garment piece) {
        List<Garment> pieces = new ArrayList<>(kit.pieces());
        pieces.add(piece);
        return new Outfit.Kit(pieces, kit.pads());
    }

    /** Every piece with its finish new, worn or gone. */
    static Outfit.Kit finished(Outfit.Kit kit, GarmentSpec.Finish finish) {
        return new Outfit.Kit(
                kit.pieces().stream().map(g -> finished(g.spec(), finish)).toList(), kit.pads());
    }

    private static Garment finished(GarmentSpec s, GarmentSpec.Finish finish) {
        return Garments.derive(new GarmentSpec(
                        s.id(),
                        s.name(),
                        s.kind(),
                        s.mass(),
                        s.fabric(),
                        s.fill(),
                        s.face(),
                        s.hooded(),
                        s.coverage(),
                        s.room(),
                        s.thickness(),
                        s.resistance(),
                        s.vapourResistance(),
                        s.airPermeability(),
                        finish,
                        s.packedVolume(),
                        s.price()))
                .garment();
    }

    /** A filled piece of nylon with a tight face, but for what is said. */
    static Garment filled(String id, GarmentKind kind, double grams, Fill fill, Double room, Double permeability) {
        return Garments.derive(new GarmentSpec(
                        id,
                        id,
                        kind,
                        grams / 1000,
                        Fabric.NYLON_WOVEN,
                        fill,
                        permeability == null ? FaceTightness.TIGHT : null,
                        null,
                        null,
                        room,
                        null,
                        null,
                        null,
                        permeability,
                        GarmentSpec.Finish.NEW,
                        null,
                        null))
                .garment();
    }

    static Fill treatedDown(double grams, double cubicInchPerOunce) {
        Fill.Down down = (Fill.Down) Nights.down(grams, cubicInchPerOunce);
        return new Fill.Down(down.fillMass(), down.fillPower(), true, Double.NaN);
    }

    // --- Readings ---

    /** Shortfall heat [kJ] at a time [s]: at the last one known when the run stopped before. */
    static double shortfall(NightResult night, double time) {
        double[] t = night.trace().time();
        double[] v = night.trace().shortfall();
        for (int i = 1; i < t.length; i++) {
            if (t[i] >= time) {
                return 1e-3 * (v[i - 1] + (v[i] - v[i - 1]) * (time - t[i - 1]) / (t[i] - t[i - 1]));
            }
        }
        return 1e-3 * v[v.length - 1];
    }

    static double shortfall(NightResult night) {
        return 1e-3 * night.shortfallHeat();
    }
}
