package longnight.night;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longnight.assumption.ParameterSet;
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
import longnight.figure.Posture;
import longnight.figure.Zone;
import longnight.outdoors.Ground;
import longnight.outdoors.OutdoorParameter;
import longnight.outdoors.Site;
import longnight.outdoors.SiteClimate;
import longnight.outdoors.Surroundings;
import longnight.outdoors.Weather;

/** Invented kits, people and nights for tests of the engine, built in code. */
final class Nights {

    static final Ground SNOW = new Ground("snow", 0.21, 0.68e6, 1.0, true);
    static final Ground WET_SOIL = new Ground("wet turf", 1.4, 3.0e6, 0.3, false);
    static final Pad SIT_PAD = new Pad("pad", "foam sit pad", 0.30, 0.12, 0.06, 2000);

    private Nights() {}

    static Garment piece(String id, GarmentKind kind, double grams, Fabric fabric, Fill fill, FaceTightness face) {
        return Garments.derive(new GarmentSpec(
                        id,
                        id,
                        kind,
                        grams / 1000,
                        fabric,
                        fill,
                        face,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        GarmentSpec.Finish.NEW,
                        null,
                        null))
                .garment();
    }

    static Fill batt(double gramsPerSquareMetre) {
        return new Fill.Batt(Fill.BattType.SHORT_STAPLE, gramsPerSquareMetre / 1000, Map.of());
    }

    static Fill down(double grams, double cubicInchPerOunce) {
        return new Fill.Down(grams / 1000, cubicInchPerOunce * 5.78037e-4, false, Double.NaN);
    }

    static Garment baseTop() {
        return piece("base top", GarmentKind.BASE_TOP, 155, Fabric.POLYESTER_KNIT, null, null);
    }

    static Garment baseBottom() {
        return piece("base tights", GarmentKind.BASE_BOTTOM, 120, Fabric.POLYESTER_KNIT, null, null);
    }

    static Garment trousers() {
        return piece("field trousers", GarmentKind.TROUSERS, 235, Fabric.NYLON_WOVEN, null, FaceTightness.MEDIUM);
    }

    static Garment windJacket() {
        return piece("wind jacket", GarmentKind.WIND_TOP, 95, Fabric.NYLON_WOVEN, null, FaceTightness.TIGHT);
    }

    static Garment vest() {
        return piece("vest", GarmentKind.VEST, 150, Fabric.NYLON_WOVEN, batt(60), FaceTightness.TIGHT);
    }

    static Garment parka(double gramsPerSquareMetre) {
        return piece(
                "parka",
                GarmentKind.PARKA,
                300 + 1.4 * gramsPerSquareMetre,
                Fabric.NYLON_WOVEN,
                batt(gramsPerSquareMetre),
                FaceTightness.TIGHT);
    }

    static Garment overtrousers(double gramsPerSquareMetre) {
        return piece(
                "overtrousers",
                GarmentKind.INSULATED_TROUSERS,
                235 + 0.9 * gramsPerSquareMetre,
                Fabric.NYLON_WOVEN,
                batt(gramsPerSquareMetre),
                FaceTightness.TIGHT);
    }

    static Garment cap() {
        return piece("cap", GarmentKind.CAP, 60, Fabric.ACRYLIC_KNIT, null, null);
    }

    static Garment balaclava() {
        return piece("balaclava", GarmentKind.BALACLAVA, 80, Fabric.FLEECE, null, null);
    }

    static Garment linerGloves() {
        return piece("liner gloves", GarmentKind.LINER_GLOVES, 45, Fabric.POLYESTER_KNIT, null, null);
    }

    static Garment mitts(double gramsPerSquareMetre) {
        return piece(
                "mitts", GarmentKind.MITTENS, 190, Fabric.NYLON_WOVEN, batt(gramsPerSquareMetre), FaceTightness.TIGHT);
    }

    static Garment socks() {
        return piece("socks", GarmentKind.SOCKS, 90, Fabric.WOOL_KNIT, null, null);
    }

    static Garment boots() {
        return piece("boots", GarmentKind.BOOTS, 1800, Fabric.LEATHER, null, null);
    }

    static Garment winterBoots() {
        return piece("winter boots", GarmentKind.INSULATED_BOOTS, 2600, Fabric.RUBBER_FELT, null, null);
    }

    static Outfit.Kit kit(List<Pad> pads, Garment... pieces) {
        return new Outfit.Kit(List.of(pieces), pads);
    }

    static Outfit.Kit light() {
        return kit(
                List.of(SIT_PAD),
                baseTop(),
                baseBottom(),
                trousers(),
                windJacket(),
                piece(
                        "light down jacket",
                        GarmentKind.INSULATED_JACKET,
                        220,
                        Fabric.NYLON_WOVEN,
                        down(85, 700),
                        FaceTightness.TIGHT),
                cap(),
                linerGloves(),
                socks(),
                boots());
    }

    static Outfit.Kit typical() {
        return kit(
                List.of(SIT_PAD),
                baseTop(),
                baseBottom(),
                trousers(),
                windJacket(),
                vest(),
                parka(100),
                overtrousers(80),
                cap(),
                linerGloves(),
                mitts(133),
                socks(),
                boots());
    }

    static Outfit.Kit heavy() {
        return kit(
                List.of(new Pad("mat", "foam mat", 0.35, 0.6, 0.26, 2500)),
                piece("wool top", GarmentKind.BASE_TOP, 245, Fabric.WOOL_KNIT, null, null),
                piece("wool tights", GarmentKind.BASE_BOTTOM, 185, Fabric.WOOL_KNIT, null, null),
                trousers(),
                windJacket(),
                vest(),
                piece(
                        "heavy parka",
                        GarmentKind.PARKA,
                        885,
                        Fabric.NYLON_WOVEN,
                        new Fill.Batt(
                                Fill.BattType.SHORT_STAPLE,
                                0.130,
                                new EnumMap<>(Map.of(Zone.CHEST, 0.230, Zone.BACK, 0.230))),
                        FaceTightness.TIGHT),
                overtrousers(130),
                balaclava(),
                linerGloves(),
                mitts(340),
                socks(),
                winterBoots());
    }

    static Person man() {
        return new Person("B1", Person.Sex.MALE, 28, 1.80, 78, 15, 50, 1);
    }

    static Person smallWoman() {
        return new Person("B4", Person.Sex.FEMALE, 25, 1.60, 51, 20, 40, 1);
    }

    /** Weather constant over the night but for a straight fall of temperature. */
    static Weather weather(double from, double to, double wind, double cloud, double humidity, double hours) {
        int n = (int) Math.ceil(hours) + 1;
        double[] time = new double[n];
        double[] air = new double[n];
        for (int i = 0; i < n; i++) {
            time[i] = 3600.0 * i;
            air[i] = from + (to - from) * i / (n - 1);
        }
        return new Weather(
                time,
                air,
                filled(n, humidity),
                filled(n, wind),
                filled(n, cloud),
                filled(n, 0),
                filled(n, Double.NaN),
                filled(n, Double.NaN));
    }

    /** As {@link #weather} under full cloud, with steady precipitation [mm/h] between two hours. */
    static Weather wetWeather(
            double from, double to, double wind, double humidity, double hours, double rate, int begin, int end) {
        Weather w = weather(from, to, wind, 1, humidity, hours);
        double[] precipitation = w.precipitation();
        for (int i = begin; i < end; i++) {
            precipitation[i] = rate;
        }
        return new Weather(
                w.time(),
                w.airCelsius(),
                w.relativeHumidity(),
                w.wind10(),
                w.cloud(),
                precipitation,
                w.pressure(),
                w.skyLongwave());
    }

    private static double[] filled(int n, double value) {
        double[] a = new double[n];
        Arrays.fill(a, value);
        return a;
    }

    static Site site(double roughness, double shelter, double skyGap, Ground ground) {
        return new Site(300, roughness, shelter, skyGap, 0, 0, ground);
    }

    static Surroundings outdoors(Site site, Weather weather, Posture posture) {
        return new SiteClimate(site, weather, posture, ParameterSet.nominal(OutdoorParameter.class));
    }

    static Scenario scenario(Person person, Outfit outfit, Surroundings surroundings, Posture posture, double hours) {
        return new Scenario(
                "test night",
                "test night",
                "test kit",
                person,
                outfit,
                surroundings,
                NightPlan.still(20 * 3600, hours * 3600, posture, true, true, Double.NaN),
                new ArrayList<>(),
                List.of(),
                List.of());
    }

    /** A calm clear night in the open on snow, sitting. */
    static Scenario calm(Outfit outfit, double from, double to) {
        Posture p = Posture.SITTING_KNEES_UP;
        return scenario(man(), outfit, outdoors(site(0.005, 1, 1, SNOW), weather(from, to, 1.5, 0, 0.8, 12), p), p, 12);
    }
}
