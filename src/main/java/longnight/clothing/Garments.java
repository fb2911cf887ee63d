package longnight.clothing;

import static longnight.clothing.ClothingParameter.ACTIVE_BATT_DENSITY;
import static longnight.clothing.ClothingParameter.ACTIVE_BATT_RADIATION;
import static longnight.clothing.ClothingParameter.BATT_CONSTRUCTION;
import static longnight.clothing.ClothingParameter.CONTINUOUS_FILAMENT_DENSITY;
import static longnight.clothing.ClothingParameter.CONTINUOUS_FILAMENT_RADIATION;
import static longnight.clothing.ClothingParameter.DOWN_CONSTRUCTION;
import static longnight.clothing.ClothingParameter.DOWN_FILL_POWER_KEPT;
import static longnight.clothing.ClothingParameter.DOWN_OVERFILL;
import static longnight.clothing.ClothingParameter.DOWN_RADIATION;
import static longnight.clothing.ClothingParameter.SHORT_STAPLE_DENSITY;
import static longnight.clothing.ClothingParameter.SHORT_STAPLE_RADIATION;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import longnight.assumption.Guess;
import longnight.assumption.ParameterSet;
import longnight.clothing.Garment.ZoneLayer;
import longnight.clothing.GarmentSpec.Interval;
import longnight.clothing.law.AirGap;
import longnight.clothing.law.CurvedStack;
import longnight.clothing.law.Loft;
import longnight.figure.BodySegment;
import longnight.figure.Zone;
import org.jspecify.annotations.Nullable;

/**
 * From what a label says to what the heat balance needs. Whatever is not in the spec is derived from the kind, the mass and
 * the fill, and every derived value is listed as a guess.
 *
 * <p>A garment's area is that of the cut over a reference body of 1.869 m2 (Tanabe et al. 2002) times an ease; it does not
 * change with the wearer. Seams, zips and pockets take their share of the mass.
 */
public final class Garments {
    private static final String ESTIMATE = "engineering estimate, no source";
    private static final String PRACTICE = "common practice, no source";

    /** Skin area of the reference body by segment, both sides [m2], Tanabe et al. (2002), Table 1. */
    static final double[] REFERENCE_AREA = {0.140, 0.175, 0.161, 0.221, 0.192, 0.126, 0.100, 0.418, 0.224, 0.112};

    /** Pressure at which the free density of a batt is stated [Pa]; engineering estimate (note C-67). */
    private static final double BATT_PRESSURE = 15;

    private static final double TORTUOSITY = 1.05;

    private static final double TIGHT_PERMEABILITY = 3;
    private static final double MEDIUM_PERMEABILITY = 15;
    private static final double OPEN_PERMEABILITY = 150;
    /** Woven trousers without a coating, 50 to 200 (from memory, note C-83). */
    private static final double TROUSER_PERMEABILITY = 80;

    /** Share of the hand's area that is fingers, which are too thin to be insulated well. */
    private static final double FINGER_SHARE = 0.5;

    private static final double FINGER_RADIUS = 0.009;

    /**
     * A garment with all it needs, and how it came by it.
     *
     * @param garment ready for {@link Stacks}
     * @param guesses everything that the spec did not say
     */
    public record Derived(Garment garment, List<Guess> guesses) {}

    private Garments() {}

    /** Derives with nominal constants. */
    public static Derived derive(GarmentSpec spec) {
        return derive(spec, ParameterSet.nominal(ClothingParameter.class));
    }

    /**
     * Derives what the spec leaves open.
     *
     * @throws IllegalArgumentException when a value is out of its range, or an insulated kind names no fill, no cloth and no
     *     resistance
     */
    public static Derived derive(GarmentSpec spec, ParameterSet<ClothingParameter> parameters) {
        return new Derivation(spec, parameters).run();
    }

    /**
     * The garment as the given constants make it. A garment that is just what the nominal derivation makes of its spec, closed
     * or open, is derived again; one that was made by hand stays.
     */
    static Garment under(Garment garment, ParameterSet<ClothingParameter> parameters) {
        if (parameters.equals(ParameterSet.nominal(ClothingParameter.class))) {
            return garment;
        }
        Garment nominal = derive(garment.spec()).garment();
        if (nominal.equals(garment)) {
            return derive(garment.spec(), parameters).garment();
        }
        return nominal.opened().equals(garment)
                ? derive(garment.spec(), parameters).garment().opened()
                : garment;
    }

    /** Whether a water-repellent finish on the piece would count: all but knits, fleece and cotton. */
    public static boolean takesFinish(Garment garment) {
        return RainFace.of(fabric(garment.spec()), garment.pieces().get(0).airPermeability()) != RainFace.OPEN;
    }

    static boolean isFilled(GarmentSpec spec) {
        return spec.fill() != null && !(spec.fill() instanceof Fill.None);
    }

    /** The cloth, or the face of a filled piece, said or usual. */
    public static Fabric fabric(GarmentSpec spec) {
        if (spec.fabric() != null) {
            return spec.fabric();
        }
        Fabric usual = Cut.of(spec.kind()).fabric();
        return !isFilled(spec) || usual == Fabric.LAMINATE ? usual : Fabric.NYLON_WOVEN;
    }

    static double skinArea(Zone zone) {
        BodySegment segment = zone.segment();
        return REFERENCE_AREA[segment.ordinal()] * zone.shareOfSegment();
    }

    /** Mass per area of the cloth of a plain piece [kg/m2]. */
    static double clothMass(GarmentSpec spec, double area, Cloth cloth) {
        return Math.min(Cut.of(spec.kind()).clothShare() * spec.mass() / area, cloth.heaviest());
    }

    /** Mass per area of face and lining of a filled piece [kg/m2]. */
    static double shellMass(GarmentSpec spec, double fillMass, double area, Cloth cloth) {
        double least = 0.03; // two of the lightest cloths, 15 g/m2 each
        return Math.min(
                2 * cloth.heaviest(), Math.max(least, Cut.FILLED_CLOTH_SHARE * (spec.mass() - fillMass) / area));
    }

    /** Evaporative resistance of face and lining together [m2 Pa/W]. */
    static double shellVapour(Fabric fabric, double arealMass) {
        return 1.5 * Cloth.of(fabric).vapour(arealMass / 2);
    }

    private record Flat(double thickness, double resistance, double vapour) {}

    /** Items of which the whole is known better than the cloth, as worn, with the sole left aside. */
    private static @Nullable Flat item(GarmentSpec spec) {
        return switch (spec.kind()) {
            case LINER_GLOVES -> new Flat(0.001, 0.025, 4);
            case GLOVES -> new Flat(0.006, 0.10, 20);
            case MITTENS -> {
                double size = Math.min(2, Math.max(0.5, spec.mass() / 0.19));
                yield new Flat(0.015 * size, 0.30 * Math.min(size, 0.55 / 0.30), 35 * size);
            }
            case SHOES -> new Flat(0.004, 0.06, 40);
            case BOOTS -> new Flat(0.004, 0.12, 80);
            case INSULATED_BOOTS -> new Flat(0.010, 0.25, 150);
            case BOOTIES -> new Flat(0.025, 0.45, 45);
            default -> null;
        };
    }

    private static double itemPermeability(GarmentKind kind) {
        return switch (kind) {
            case LINER_GLOVES -> 500;
            case GLOVES, MITTENS, SHOES, BOOTIES -> 5;
            default -> 0;
        };
    }

    private static final class Derivation {
        private final GarmentSpec spec;
        private final ParameterSet<ClothingParameter> parameters;
        private final Cut cut;
        private final List<Guess> guesses = new ArrayList<>();

        Derivation(GarmentSpec spec, ParameterSet<ClothingParameter> parameters) {
            this.spec = spec;
            this.parameters = parameters;
            this.cut = Cut.of(spec.kind());
        }

        Derived run() {
            check();
            Map<Zone, Interval> coverage = coverage();
            double area = area(coverage);
            Fabric fabric = fabric();
            Cloth cloth = Cloth.of(fabric);
            if (spec.room() == null) {
                if (Double.isNaN(cut.room())) {
                    guess("room under it", "stretches to fit", ESTIMATE);
                } else {
                    guess("room under it", cut.room(), "m", ESTIMATE);
                }
            }
            double permeability = permeability(fabric, cloth);
            List<ZoneLayer> pieces = new ArrayList<>();
            Fill fill = spec.fill() == null ? new Fill.None() : spec.fill();
            Flat plain = fill instanceof Fill.None ? plain(fabric, cloth, area) : shell(fill, fabric, area, coverage);
            Bulk bulk = bulk(fill, area);
            Zone widest = widest(coverage);
            for (Map.Entry<Zone, Interval> covered : coverage.entrySet()) {
                double arealMass = spec.mass() / area;
                Zone zone = covered.getKey();
                pieces.add(layer(zone, covered.getValue(), plain, bulk, arealMass, permeability, zone == widest));
            }
            return new Derived(new Garment(spec, List.copyOf(pieces)), List.copyOf(guesses));
        }

        private void check() {
            between("mass", spec.mass(), 0.005, 6, "kg");
            between("room", spec.room(), 0, 0.1, "m");
            between("thickness", spec.thickness(), 1e-5, 0.2, "m");
            between("resistance", spec.resistance(), 1e-4, 3, "m2K/W");
            between("vapourResistance", spec.vapourResistance(), 0, 1e5, "m2Pa/W");
            between("airPermeability", spec.airPermeability(), 0, 5000, "L/(m2 s)");
            if (spec.fill() instanceof Fill.Batt batt) {
                between("batt", batt.arealMass(), 0.02, 0.6, "kg/m2");
                batt.byZone().forEach((zone, mass) -> between("batt on " + zone, mass, 0.0, 0.6, "kg/m2"));
            } else if (spec.fill() instanceof Fill.Down down) {
                between("down", down.fillMass(), 0.01, 1.5, "kg");
                between("fill power", down.fillPower(), 0.2, 0.6, "m3/kg");
                if (!Double.isNaN(down.constructionFactor())) {
                    between("construction factor", down.constructionFactor(), 0.1, 1, "1");
                }
            }
            boolean insulated = spec.kind() == GarmentKind.PARKA
                    || spec.kind() == GarmentKind.CAPE
                    || spec.kind() == GarmentKind.INSULATED_JACKET
                    || spec.kind() == GarmentKind.INSULATED_TROUSERS;
            if (insulated && !isFilled(spec) && spec.fabric() == null && spec.resistance() == null) {
                throw new IllegalArgumentException(spec.id() + ": a piece of kind " + spec.kind()
                        + " needs a fill, or its cloth, or its measured resistance");
            }
        }

        private void between(String what, @Nullable Double value, double low, double high, String unit) {
            if (value != null && !(value >= low && value <= high)) {
                throw new IllegalArgumentException(
                        spec.id() + ": " + what + " is " + value + ", allowed " + low + " to " + high + " " + unit);
            }
        }

        private Map<Zone, Interval> coverage() {
            if (spec.coverage() != null) {
                spec.coverage().forEach((zone, interval) -> {
                    if (!(interval.from() >= 0 && interval.from() < interval.to() && interval.to() <= 1)) {
                        throw new IllegalArgumentException(spec.id() + ": coverage of " + zone + " is "
                                + interval.from() + " to " + interval.to() + ", allowed 0 to 1, near end first");
                    }
                });
                return new EnumMap<>(spec.coverage());
            }
            Map<Zone, Interval> coverage = new EnumMap<>(cut.coverage());
            boolean hooded = spec.hooded() != null ? spec.hooded() : cut.hooded();
            if (hooded) {
                coverage.put(Zone.SCALP, new Interval(0, 1));
                coverage.put(Zone.NECK, new Interval(0, 1));
                coverage.put(Zone.FACE, new Interval(0, cut.hoodFace()));
            }
            if (spec.hooded() == null && coverage.containsKey(Zone.CHEST)) {
                guess("hood worn up", hooded ? "yes" : "no", PRACTICE);
            }
            StringJoiner words = new StringJoiner(", ");
            coverage.forEach((zone, at) -> words.add(zone + " " + at.from() + "-" + at.to()));
            guess("covers (near end 0, far end 1)", words.toString(), ESTIMATE);
            return coverage;
        }

        private double area(Map<Zone, Interval> coverage) {
            double skin = 0;
            for (Map.Entry<Zone, Interval> covered : coverage.entrySet()) {
                Interval at = covered.getValue();
                skin += skinArea(covered.getKey()) * (at.to() - at.from());
            }
            double area = skin * cut.ease();
            guess("area of the piece", area, "m2", ESTIMATE + ": covered skin of a reference body times ease");
            return area;
        }

        /** The zone of which the piece covers most: its layer is the one told in the guesses. */
        private static Zone widest(Map<Zone, Interval> coverage) {
            Zone widest = Zone.SCALP;
            double most = 0;
            for (Map.Entry<Zone, Interval> covered : coverage.entrySet()) {
                Interval at = covered.getValue();
                double area = skinArea(covered.getKey()) * (at.to() - at.from());
                if (area > most) {
                    most = area;
                    widest = covered.getKey();
                }
            }
            return widest;
        }

        private Fabric fabric() {
            if (spec.fabric() != null) {
                return spec.fabric();
            }
            Fabric fabric = Garments.fabric(spec);
            guess("cloth", fabric.name(), PRACTICE);
            return fabric;
        }

        private double permeability(Fabric fabric, Cloth cloth) {
            if (spec.airPermeability() != null) {
                return spec.airPermeability();
            }
            double value;
            FaceTightness face = spec.face();
            if (face != null) {
                value = switch (face) {
                    case TIGHT -> Math.min(TIGHT_PERMEABILITY, cloth.airPermeability());
                    case MEDIUM -> MEDIUM_PERMEABILITY;
                    case OPEN -> Math.max(OPEN_PERMEABILITY, cloth.airPermeability());
                };
            } else if (spec.fabric() == null && item(spec) != null) {
                value = itemPermeability(spec.kind());
            } else if (spec.kind() == GarmentKind.TROUSERS && fabric == Fabric.NYLON_WOVEN) {
                value = TROUSER_PERMEABILITY;
            } else {
                value = cloth.airPermeability();
            }
            guess("air permeability", value, "L/(m2 s)", ESTIMATE + ": at 100 Pa, class of cloth");
            return value;
        }

        /** A piece without a fill. */
        private Flat plain(Fabric fabric, Cloth cloth, double area) {
            Flat derived;
            Flat item = item(spec);
            if (item == null || (spec.fabric() != null && isSoft(fabric))) {
                double arealMass = clothMass(spec, area, cloth);
                guess("mass of the cloth per area", arealMass, "kg/m2", ESTIMATE + ": without seams, hems and zips");
                derived = new Flat(cloth.thickness(arealMass), cloth.resistance(arealMass), cloth.vapour(arealMass));
            } else {
                derived = item;
                if (spec.kind() == GarmentKind.GLOVES) {
                    // The usual value holds for the glove on the hand; undo the curvature that the stack will apply.
                    double flat = item.resistance() / new CurvedStack(Radius.HAND, false).add(item.thickness());
                    derived = new Flat(item.thickness(), flat, item.vapour());
                }
            }
            double thickness = known("thickness", spec.thickness(), derived.thickness(), "m");
            double resistance = known("thermal resistance, flat", spec.resistance(), derived.resistance(), "m2K/W");
            double vapour = known("evaporative resistance", spec.vapourResistance(), derived.vapour(), "m2Pa/W");
            return new Flat(thickness, resistance, vapour);
        }

        private static boolean isSoft(Fabric fabric) {
            return switch (fabric) {
                case POLYESTER_KNIT, WOOL_KNIT, COTTON_KNIT, ACRYLIC_KNIT, FLEECE, OPEN_PILE -> true;
                default -> false;
            };
        }

        /** Face and lining of a filled piece. */
        private Flat shell(Fill fill, Fabric fabric, double area, Map<Zone, Interval> coverage) {
            Cloth cloth = Cloth.of(fabric);
            double fillMass = 0;
            if (fill instanceof Fill.Down down) {
                fillMass = down.fillMass();
            } else if (fill instanceof Fill.Batt batt) {
                for (Map.Entry<Zone, Interval> covered : coverage.entrySet()) {
                    double share = covered.getValue().to() - covered.getValue().from();
                    fillMass += battMass(batt, covered.getKey()) * skinArea(covered.getKey()) * share * cut.ease();
                }
            }
            double arealMass = shellMass(spec, fillMass, area, cloth);
            guess("mass of face and lining per area", arealMass, "kg/m2", ESTIMATE);
            return new Flat(cloth.thickness(arealMass), cloth.resistance(arealMass), shellVapour(fabric, arealMass));
        }

        private double known(String what, @Nullable Double said, double derived, String unit) {
            if (said != null) {
                return said;
            }
            guess(
                    what,
                    derived,
                    unit,
                    ESTIMATE + (item(spec) == null ? ": class of cloth and its mass" : ": usual for its kind"));
            return derived;
        }

        private record Bulk(double density, double radiation, double constant, double construction, double loft) {}

        /** What the fill is like before it is known how much of it lies where; loft is the share of thickness kept. */
        private Bulk bulk(Fill fill, double area) {
            if (fill instanceof Fill.Batt batt) {
                double density = parameters.get(
                        switch (batt.type()) {
                            case SHORT_STAPLE -> SHORT_STAPLE_DENSITY;
                            case CONTINUOUS_FILAMENT -> CONTINUOUS_FILAMENT_DENSITY;
                            case ACTIVE -> ACTIVE_BATT_DENSITY;
                        });
                double radiation = parameters.get(
                        switch (batt.type()) {
                            case SHORT_STAPLE -> SHORT_STAPLE_RADIATION;
                            case CONTINUOUS_FILAMENT -> CONTINUOUS_FILAMENT_RADIATION;
                            case ACTIVE -> ACTIVE_BATT_RADIATION;
                        });
                double construction = parameters.get(BATT_CONSTRUCTION);
                guess("batt bulk density in the garment", density, "kg/m3", ESTIMATE + ": class of batt");
                guess(
                        "radiation constant of the batt",
                        radiation,
                        "W kg/(m4 K)",
                        "class of batt, after Farnworth 1983");
                guess("share of the batt's resistance kept by quilting", construction, "1", ESTIMATE);
                // Quilting lines are narrow: they cost resistance, hardly thickness.
                double constant = Loft.compressionConstant(BATT_PRESSURE, density);
                return new Bulk(density, radiation, constant, construction, 1);
            }
            if (fill instanceof Fill.Down down) {
                double kept = parameters.get(DOWN_FILL_POWER_KEPT);
                double overfill = parameters.get(DOWN_OVERFILL);
                double radiation = parameters.get(DOWN_RADIATION);
                double density = Loft.downDensity(kept * down.fillPower(), overfill);
                guess("share of the fill power kept in use", kept, "1", ESTIMATE);
                guess("overfill", overfill, "1", PRACTICE);
                guess("down bulk density in the garment", density, "kg/m3", "fill power kept in use, and overfill");
                guess("radiation constant of the down", radiation, "W kg/(m4 K)", DOWN_RADIATION.source());
                guess("down per area", down.fillMass() / area, "kg/m2", ESTIMATE + ": spread evenly over the piece");
                double construction = down.constructionFactor();
                if (Double.isNaN(construction)) {
                    construction = parameters.get(DOWN_CONSTRUCTION);
                    guess(
                            "share of the loft kept by the construction",
                            construction,
                            "1",
                            PRACTICE + " (R-03): sewn construction keeps a share of the loft");
                }
                double loose = Loft.downDensity(kept * down.fillPower(), 1);
                return new Bulk(
                        density,
                        radiation,
                        Loft.compressionConstant(Loft.TEST_PRESSURE, loose),
                        construction,
                        construction);
            }
            return new Bulk(0, 0, 0, 1, 1);
        }

        private static double battMass(Fill.Batt batt, Zone zone) {
            Double here = batt.byZone().get(zone);
            return here == null ? batt.arealMass() : here;
        }

        private ZoneLayer layer(
                Zone zone, Interval at, Flat shell, Bulk bulk, double arealMass, double permeability, boolean tell) {
            double fillMass = 0;
            if (spec.fill() instanceof Fill.Batt batt) {
                fillMass = battMass(batt, zone);
            } else if (spec.fill() instanceof Fill.Down down) {
                fillMass = down.fillMass() * arealMass / spec.mass();
            }
            if (fillMass == 0) {
                return new ZoneLayer(
                        zone,
                        at.from(),
                        at.to(),
                        shell.thickness(),
                        shell.resistance(),
                        shell.vapour(),
                        arealMass,
                        0,
                        0,
                        0,
                        0,
                        1,
                        permeability);
            }
            double loft = bulk.loft() * fillMass / bulk.density();
            double thickness = shell.thickness() + loft;
            double construction = bulk.construction();
            if (zone == Zone.HAND && spec.kind() == GarmentKind.GLOVES) {
                double onFinger = new CurvedStack(FINGER_RADIUS, false).add(thickness);
                double onHand = new CurvedStack(Radius.HAND, false).add(thickness);
                construction *= 1 - FINGER_SHARE * (1 - onFinger / onHand);
            }
            double free = Loft.resistance(fillMass, bulk.density(), bulk.radiation(), 1);
            double resistance = shell.resistance() + construction * free;
            double vapour = shell.vapour() + AirGap.vapourResistance(loft) * TORTUOSITY;
            if (spec.thickness() != null) {
                thickness = spec.thickness();
            }
            if (spec.resistance() != null) {
                resistance = spec.resistance();
                construction = Math.max(0.8 * resistance, resistance - shell.resistance()) / free;
            }
            if (spec.vapourResistance() != null) {
                vapour = spec.vapourResistance();
            }
            if (tell) {
                String reason = "fill on " + zone + ", face and lining; two-flux radiation after Farnworth 1983";
                if (spec.thickness() == null) {
                    guess("thickness", thickness, "m", reason);
                }
                if (spec.resistance() == null) {
                    guess("thermal resistance, flat", resistance, "m2K/W", reason);
                }
                if (spec.vapourResistance() == null) {
                    guess(
                            "evaporative resistance",
                            vapour,
                            "m2Pa/W",
                            "fill on " + zone + " as still air, face and lining");
                }
            }
            return new ZoneLayer(
                    zone,
                    at.from(),
                    at.to(),
                    thickness,
                    resistance,
                    vapour,
                    Math.max(arealMass, fillMass),
                    fillMass,
                    bulk.density(),
                    bulk.radiation(),
                    bulk.constant(),
                    construction,
                    permeability);
        }

        private void guess(String quantity, double value, String unit, String reason) {
            guesses.add(Guess.number(spec.id(), quantity, value, unit, reason));
        }

        private void guess(String quantity, String word, String reason) {
            guesses.add(Guess.word(spec.id(), quantity, word, reason));
        }
    }
}
