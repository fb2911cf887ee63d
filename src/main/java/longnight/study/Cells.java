package longnight.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import longnight.assumption.ParameterSet;
import longnight.clothing.ClothingParameter;
import longnight.clothing.Dressing;
import longnight.clothing.Garment;
import longnight.clothing.Garment.ZoneLayer;
import longnight.clothing.GarmentKind;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.clothing.PatchStack;
import longnight.clothing.Stacks;
import longnight.clothing.law.WholeBody;
import longnight.figure.Posture;
import longnight.figure.Zone;

/**
 * The skin of one person in one posture, cut at every hem of a wardrobe, and what every choice of a region puts over each
 * cell: computed from the choice worn alone, crush and curvature included, because with anything else on it can only get
 * less.
 */
final class Cells {

    /** Cells narrower than this share of a zone may be given to a neighbour when the whole kit is compiled. */
    private static final double SLIVER = 0.02;

    private static final double TINY = 1e-9;

    /** Part of a zone in the air, or all of what a zone presses on the ground. */
    record Cell(Zone zone, double from, double to, double area, double diameter) {
        double middle() {
            return 0.5 * (from + to);
        }
    }

    /** What a cell can be, from the worst to the best value over a set of choices. */
    enum Fact {
        /** Cloth alone, flat on the cell [m2 K/W]; 0 when bare. */
        CLOTH,
        /** Cloth and still air film [m2 K/W]. */
        TOTAL,
        /** Evaporative resistance of the cloth [m2 Pa/W]. */
        VAPOUR,
        /** [J/(m2 K)] */
        CAPACITY,
        /** One over the air permeability, openings included [m2 s/L]. */
        TIGHTNESS,
        /** The same without openings. */
        TIGHTNESS_OF_CLOTH,
        /** One over the outer diameter [1/m]. */
        SLIMNESS
    }

    static final int FACTS = Fact.values().length;

    final List<Cell> exposed = new ArrayList<>();
    final List<Cell> pressed = new ArrayList<>();
    final Posture posture;
    final double[] areas;
    final boolean grounded;
    final Wearing wearing;

    private final Map<Region, AtomicReferenceArray<Measure>> measured = new EnumMap<>(Region.class);
    private final Map<Region, List<Choice>> choices;
    private final Map<List<Pad>, Double> through = new ConcurrentHashMap<>();
    private final Map<Long, Measure> pairs = new ConcurrentHashMap<>();
    private final ParameterSet<ClothingParameter> parameters = ParameterSet.nominal(ClothingParameter.class);

    Cells(
            double[] areas,
            Posture posture,
            boolean grounded,
            Wearing wearing,
            List<Garment> wardrobe,
            Map<Region, List<Choice>> choices) {
        this.areas = areas;
        this.posture = posture;
        this.grounded = grounded;
        this.wearing = wearing;
        cut(wardrobe);
        this.choices = choices;
        choices.forEach((region, list) -> measured.put(region, new AtomicReferenceArray<>(list.size())));
    }

    /**
     * What a choice puts over the skin.
     *
     * @param air    by cell and fact
     * @param ground by pressed cell [m2 K/W]
     */
    record Measure(float[] air, float[] ground) {}

    /** Measured when first asked for; threads may do it twice and find the same. */
    Measure measure(Region region, int choice) {
        AtomicReferenceArray<Measure> known = Objects.requireNonNull(measured.get(region));
        Measure measure = known.get(choice);
        if (measure == null) {
            measure = measure(wearing.pieces(pieces(region, choice)));
            known.set(choice, measure);
        }
        return measure;
    }

    /** What two choices of different regions put over the skin together. */
    Measure measure(Region one, int first, Region other, int second) {
        long key = ((long) one.ordinal() << 60) | ((long) other.ordinal() << 56) | ((long) first << 28) | second;
        return pairs.computeIfAbsent(key, k -> {
            List<Garment> both = new ArrayList<>(pieces(one, first));
            both.addAll(pieces(other, second));
            return measure(wearing.pieces(Dressing.inOrder(both)));
        });
    }

    private List<Garment> pieces(Region region, int choice) {
        return Objects.requireNonNull(choices.get(region)).get(choice).pieces();
    }

    List<PatchStack> compile(List<Garment> pieces, List<Pad> pads) {
        return Stacks.compile(new Outfit.Kit(pieces, pads), posture, areas, parameters, grounded);
    }

    /** The pressed patches with given resistances of cloth under the body [m2 K/W]. */
    List<PatchStack> onPads(double[] cloth, List<Pad> pads) {
        return compile(standIn(cloth), pads).stream()
                .filter(PatchStack::contact)
                .toList();
    }

    /** Heat through what is pressed, in middling clothes on the given pads [W/K]; orders work, no more. */
    double through(List<Pad> pads) {
        return through.computeIfAbsent(pads, key -> {
            double[] cloth = new double[pressed.size()];
            Arrays.fill(cloth, Part.UNDER);
            double sum = 0;
            for (PatchStack patch : onPads(cloth, wearing.pads(key))) {
                sum += patch.area() / (Part.UNDER + patch.padResistance());
            }
            return sum;
        });
    }

    /** One made-up piece that has the given resistances under the body. */
    private List<Garment> standIn(double[] cloth) {
        double thin = parameters.get(ClothingParameter.THIN_UNDER_BODY);
        List<ZoneLayer> layers = new ArrayList<>();
        for (int c = 0; c < cloth.length; c++) {
            if (cloth[c] > 0) {
                Zone zone = pressed.get(c).zone();
                layers.add(new ZoneLayer(zone, 0, 1, 0.001, cloth[c] / thin, 10, 1, 0, 0, 0, 0, 1, 1));
            }
        }
        if (layers.isEmpty()) {
            return List.of();
        }
        return List.of(StandIn.of("pressed", GarmentKind.BASE_BOTTOM, layers));
    }

    private void cut(List<Garment> wardrobe) {
        for (PatchStack bare : compile(List.of(), List.of())) {
            if (bare.contact()) {
                pressed.add(new Cell(bare.zone(), 0, 1, bare.area(), bare.outerDiameter()));
                continue;
            }
            TreeSet<Double> hems = new TreeSet<>(List.of(0.0, 1.0));
            for (Garment piece : wardrobe) {
                for (Garment worn : piece.canOpen() ? List.of(piece, piece.opened()) : List.of(piece)) {
                    for (ZoneLayer layer : worn.pieces()) {
                        if (layer.zone() == bare.zone()) {
                            hems.add(layer.from());
                            hems.add(layer.to());
                        }
                    }
                }
            }
            double from = 0;
            for (double to : hems.tailSet(TINY)) {
                if (to - from > TINY) {
                    exposed.add(new Cell(bare.zone(), from, to, bare.area() * (to - from), bare.outerDiameter()));
                    from = to;
                }
            }
        }
    }

    private Measure measure(List<Garment> pieces) {
        float[] facts = new float[exposed.size() * FACTS];
        float[] under = new float[pressed.size()];
        Map<Zone, Double> at = new EnumMap<>(Zone.class);
        Map<Zone, Double> whole = new EnumMap<>(Zone.class);
        exposed.forEach(cell -> whole.merge(cell.zone(), cell.area(), Double::sum));
        for (int c = 0; c < exposed.size(); c++) {
            facts[c * FACTS + Fact.TOTAL.ordinal()] = up(WholeBody.STILL_AIR);
            facts[c * FACTS + Fact.SLIMNESS.ordinal()] = up(1 / exposed.get(c).diameter());
        }
        for (PatchStack patch : pieces.isEmpty() ? List.<PatchStack>of() : compile(pieces, List.of())) {
            if (patch.contact()) {
                for (int c = 0; c < pressed.size(); c++) {
                    if (pressed.get(c).zone() == patch.zone()) {
                        under[c] = up(sum(patch.resistance()));
                    }
                }
                continue;
            }
            double from = at.getOrDefault(patch.zone(), 0.0);
            double to = from + patch.area() / whole.getOrDefault(patch.zone(), 1.0);
            at.put(patch.zone(), to);
            for (int c = 0; c < exposed.size() && patch.layers() > 0; c++) {
                Cell cell = exposed.get(c);
                if (cell.zone() == patch.zone() && touches(cell, from, to)) {
                    if (facts[c * FACTS + Fact.CLOTH.ordinal()] == 0) {
                        facts[c * FACTS + Fact.SLIMNESS.ordinal()] = 0;
                    }
                    note(facts, c, patch, pieces);
                }
            }
        }
        return new Measure(facts, under);
    }

    /** A cell lies in a patch by its middle; a sliver takes whatever is beside it. */
    private static boolean touches(Cell cell, double from, double to) {
        boolean inside = from <= cell.middle() && cell.middle() <= to;
        boolean beside = cell.to() - cell.from() < SLIVER && from <= cell.to() + TINY && cell.from() <= to + TINY;
        return inside || beside;
    }

    private static void note(float[] facts, int c, PatchStack patch, List<Garment> pieces) {
        double cloth = sum(patch.resistance());
        double leak = 0;
        List<String> ids = Arrays.asList(patch.layerIds());
        for (Garment piece : pieces) {
            if (ids.contains(piece.spec().id())) {
                leak += 1
                        / piece.pieces().stream()
                                .filter(layer -> layer.zone() == patch.zone())
                                .findFirst()
                                .orElseThrow()
                                .airPermeability();
            }
        }
        most(facts, c, Fact.CLOTH, cloth);
        most(facts, c, Fact.TOTAL, cloth + WholeBody.STILL_AIR / patch.areaGrowth());
        most(facts, c, Fact.VAPOUR, sum(patch.vapourResistance()));
        most(facts, c, Fact.CAPACITY, sum(patch.heatCapacity()));
        most(facts, c, Fact.TIGHTNESS, Math.min(1, 1 / patch.airPermeability()));
        most(facts, c, Fact.TIGHTNESS_OF_CLOTH, Math.min(1, leak));
        most(facts, c, Fact.SLIMNESS, 1 / patch.outerDiameter());
    }

    private static void most(float[] facts, int c, Fact fact, double value) {
        int i = c * FACTS + fact.ordinal();
        facts[i] = Math.max(facts[i], up(value));
    }

    /** Stored short, never below. */
    private static float up(double value) {
        float stored = (float) value;
        return stored < value ? Math.nextUp(stored) : stored;
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
