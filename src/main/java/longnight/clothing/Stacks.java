package longnight.clothing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import longnight.assumption.ParameterSet;
import longnight.clothing.Garment.ZoneLayer;
import longnight.clothing.law.AirGap;
import longnight.clothing.law.CurvedStack;
import longnight.clothing.law.Draught;
import longnight.clothing.law.Loft;
import longnight.clothing.law.WholeBody;
import longnight.clothing.law.WindRatio;
import longnight.figure.BodySegment;
import longnight.figure.Posture;
import longnight.figure.Zone;
import org.jspecify.annotations.Nullable;

/**
 * From an outfit to patches of skin with everything that lies over them: what covers what, air gaps by fit, fills squeezed
 * by a tight piece over them or by the body's weight, curvature, posture, pads.
 *
 * <p>Call it when the kit or the posture changes, not in the time loop.
 */
public final class Stacks {
    /** Intervals of a zone narrower than this are given to their neighbour. */
    private static final double SLIVER = 0.02;

    /** Plain cloth from this thickness on is squeezed and bent like fleece. */
    private static final double LOFTY = 0.003;

    /** Thickness that a given resistance stands for: conductivity of a clothing system, engineering estimate. */
    private static final double GIVEN_CONDUCTIVITY = 0.045;

    /** Clothing mass per area and resistance, about 1 kg per clo over the covered body (from memory, low confidence). */
    private static final double GIVEN_MASS_PER_RESISTANCE = 3.7;

    private static final double GIVEN_SPECIFIC_HEAT = 1340;

    /** No dry cloth conducts better than its fibres do [W/(m K)], from memory. */
    private static final double DENSEST_CLOTH_CONDUCTIVITY = 0.25;

    /** 60 m2 Pa/W per m2 K/W: 1 over the Lewis relation, ISO 9920:2007. */
    private static final double VAPOUR_PER_DRY = 60;

    private static final double SEAT_RADIUS = 0.17;
    private static final double BACK_RADIUS = 0.25;
    private static final double SOLE_RADIUS = 0.07;

    /** Less than this under a patch is no pad [m2 K/W]; a hundredth of a sheet of paper. */
    private static final double LEAST_PAD = 1e-5;

    /** Who lies on a pad first when it is too small for all. */
    private static final Zone[] PAD_ORDER = {
        Zone.PELVIS, Zone.BACK, Zone.CHEST, Zone.THIGH, Zone.UPPER_ARM, Zone.FOREARM, Zone.SCALP, Zone.CALF, Zone.FOOT
    };

    private static final Zone[] ZONES = Zone.values();

    private Stacks() {}

    /** {@link #compile(Outfit, Posture, double[], ParameterSet, boolean)} for a body on the ground. */
    public static List<PatchStack> compile(
            Outfit outfit, Posture posture, double[] segmentArea, ParameterSet<ClothingParameter> parameters) {
        return compile(outfit, posture, segmentArea, parameters, true);
    }

    /**
     * Compiles an outfit.
     *
     * @param outfit      what is worn
     * @param posture     posture
     * @param segmentArea skin area by {@link BodySegment} ordinal, both sides together [m2], each above 0
     * @param parameters  constants of cloth
     * @param grounded    false when nothing is under the body (mesh couch, hung chair): no patch is pressed
     * @return patches whose areas sum, segment by segment, to {@code segmentArea}; exposed ones before the contact patch of a
     *     zone
     */
    public static List<PatchStack> compile(
            Outfit outfit,
            Posture posture,
            double[] segmentArea,
            ParameterSet<ClothingParameter> parameters,
            boolean grounded) {
        if (segmentArea.length != BodySegment.COUNT) {
            throw new IllegalArgumentException("areas of " + segmentArea.length + " segments, allowed 10");
        }
        for (double area : segmentArea) {
            if (!(area > 0 && area < 10)) {
                throw new IllegalArgumentException("segment area is " + area + ", allowed above 0 to 10 m2");
            }
        }
        if (outfit instanceof Outfit.Given given) {
            return given(given, segmentArea, parameters);
        }
        if (outfit instanceof Outfit.Patches made) {
            return made(made, posture);
        }
        return new Compilation((Outfit.Kit) outfit, posture, segmentArea, parameters, grounded).run();
    }

    /**
     * Static insulation of the whole body from skin to still air, uniform skin temperature, resistances in parallel [m2 K/W];
     * patches in contact with the ground are left out.
     */
    public static double staticTotal(List<PatchStack> patches) {
        double area = 0;
        double conductance = 0;
        for (PatchStack patch : patches) {
            if (!patch.contact()) {
                area += patch.area();
                conductance += patch.area() / (sum(patch.resistance()) + WholeBody.STILL_AIR / patch.areaGrowth());
            }
        }
        return area / conductance;
    }

    /**
     * Air permeability that stands for the whole outfit [L/(m2 s)]: the geometric mean over the covered, exposed area, since
     * the wind corrections go with its logarithm; 1 to 1000.
     */
    public static double airPermeability(List<PatchStack> patches) {
        double area = 0;
        double sum = 0;
        for (PatchStack patch : patches) {
            if (!patch.contact() && patch.layers() > 0) {
                double p = Math.min(1000, Math.max(1, patch.airPermeability()));
                area += patch.area();
                sum += patch.area() * StrictMath.log(p);
            }
        }
        return area == 0 ? 1000 : StrictMath.exp(sum / area);
    }

    /** Correction for wind of one patch, to keep beside it and ask as the wind changes. */
    public static WindRatio windRatio(PatchStack patch, ParameterSet<ClothingParameter> parameters) {
        return new WindRatio(
                patch.airPermeability(), sum(patch.resistance()), parameters.get(ClothingParameter.WIND_RATIO_FACTOR));
    }

    private static List<PatchStack> made(Outfit.Patches outfit, Posture posture) {
        List<PatchStack> patches = outfit.byPosture().get(posture);
        if (patches == null) {
            throw new IllegalArgumentException("no patches were made for " + posture);
        }
        return patches;
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    private static double skinRadius(Zone zone, double[] segmentArea) {
        int segment = zone.segment().ordinal();
        return Radius.of(zone) * Math.sqrt(segmentArea[segment] / Garments.REFERENCE_AREA[segment]);
    }

    // --- Given resistances ---

    private static List<PatchStack> given(
            Outfit.Given outfit, double[] segmentArea, ParameterSet<ClothingParameter> parameters) {
        List<PatchStack> patches = new ArrayList<>();
        for (Zone zone : ZONES) {
            double area = segmentArea[zone.segment().ordinal()] * zone.shareOfSegment();
            double radius = skinRadius(zone, segmentArea);
            Double resistance = outfit.resistance().get(zone);
            double r = resistance == null ? 0 : resistance;
            boolean bare = r == 0;
            if (!(r >= 0 && r <= 3)) {
                throw new IllegalArgumentException(zone + ": resistance is " + r + ", allowed 0 to 3 m2K/W");
            }
            double mass = GIVEN_MASS_PER_RESISTANCE * r;
            patches.add(new PatchStack(
                    zone,
                    area,
                    false,
                    bare ? new String[0] : new String[] {"given"},
                    bare ? new double[0] : new double[] {r},
                    bare ? new double[0] : new double[] {VAPOUR_PER_DRY * r / outfit.moisturePermeability()},
                    bare ? new double[0] : new double[] {GIVEN_SPECIFIC_HEAT * mass},
                    bare ? new double[0] : new double[] {mass},
                    WholeBody.areaFactor(r),
                    2 * (radius + GIVEN_CONDUCTIVITY * r),
                    Double.POSITIVE_INFINITY,
                    0,
                    0,
                    0,
                    bare ? new LayerWater[0] : new LayerWater[] {given(r, outfit.moisturePermeability(), parameters)},
                    true));
        }
        return List.copyOf(patches);
    }

    /** A given resistance as one polyester cloth without a gap, which the rain goes through. */
    private static LayerWater given(double r, double permeability, ParameterSet<ClothingParameter> parameters) {
        double mass = GIVEN_MASS_PER_RESISTANCE * r;
        WaterClass cloth = WaterClass.POLYESTER_KNIT;
        return new LayerWater(
                cloth,
                mass,
                cloth.cloth(mass, GIVEN_CONDUCTIVITY * r, r, parameters),
                r,
                VAPOUR_PER_DRY * r / permeability,
                null,
                0,
                null,
                0,
                0,
                0,
                0,
                RainFace.OPEN,
                0,
                1,
                0,
                parameters.get(ClothingParameter.SORPTION_TIME_THIN));
    }

    // --- Kits ---

    private record Worn(Garment garment, ZoneLayer layer) {
        Cut cut() {
            return Cut.of(garment.spec().kind());
        }

        double room() {
            Double said = garment.spec().room();
            return said != null ? said : cut().room();
        }

        boolean filled() {
            return layer.fillArealMass() > 0;
        }

        boolean lofty() {
            return filled() || layer.thickness() >= LOFTY;
        }

        /** Thickness when the fill has the given density [m]. */
        double thickness(double density) {
            return filled() ? layer.thickness() * layer.fillDensity() / density : layer.thickness();
        }

        /** Flat resistance when the fill has the given density, never above the free one [m2 K/W]. */
        double resistance(double density) {
            if (!filled()) {
                return layer.resistance();
            }
            return shell() + fill(density);
        }

        double fill(double density) {
            return Loft.resistance(layer.fillArealMass(), density, layer.radiationConstant(), layer.construction());
        }

        double shell() {
            return filled() ? Math.max(0, layer.resistance() - fill(layer.fillDensity())) : layer.resistance();
        }

        double vapour(double density) {
            double lost = layer.thickness() - thickness(density);
            return Math.max(0.2 * layer.vapourResistance(), layer.vapourResistance() - AirGap.vapourResistance(lost));
        }

        double squeezed(double pressure) {
            return filled() ? Loft.squeezed(layer.fillDensity(), layer.compressionConstant(), pressure) : 0;
        }

        double arealHeatCapacity() {
            double clothMass = layer.arealMass() - layer.fillArealMass();
            return clothMass * Cloth.of(Garments.fabric(garment.spec())).specificHeat()
                    + layer.fillArealMass() * Cloth.FILL_SPECIFIC_HEAT;
        }

        WaterClass clothClass() {
            WaterClass cloth = WaterClass.of(Garments.fabric(garment.spec()));
            // A thick piece with a woven face and no named fill is padded with something.
            return cloth == WaterClass.NYLON && !filled() && lofty() ? WaterClass.SHORT_STAPLE : cloth;
        }

        @Nullable
        WaterClass fillClass() {
            if (!filled()) {
                return null;
            }
            return garment.spec().fill() instanceof Fill.Down down
                    ? WaterClass.of(down)
                    : garment.spec().fill() instanceof Fill.Batt batt
                            ? WaterClass.of(batt)
                            : WaterClass.CONTINUOUS_FILAMENT;
        }

        /** Sole over upper [1], from usual footwear; engineering estimates. 1 for what has no sole. */
        double sole() {
            return switch (garment.spec().kind()) {
                case SHOES -> 1.0;
                case BOOTS -> 0.10 / 0.12;
                case INSULATED_BOOTS -> 0.20 / 0.25;
                case BOOTIES -> 0.10 / 0.45;
                default -> Double.NaN;
            };
        }
    }

    private static final class Compilation {
        private final Outfit.Kit kit;
        private final Posture posture;
        private final double[] segmentArea;
        private final ParameterSet<ClothingParameter> parameters;
        private final Map<Zone, Contact> contacts;
        private final List<Garment> pieces = new ArrayList<>();
        private final Map<Garment, Weight> weights = new IdentityHashMap<>();

        Compilation(
                Outfit.Kit kit,
                Posture posture,
                double[] segmentArea,
                ParameterSet<ClothingParameter> parameters,
                boolean grounded) {
            this.kit = kit;
            this.posture = posture;
            this.segmentArea = segmentArea;
            this.parameters = parameters;
            this.contacts = grounded ? Contact.of(posture) : Map.of();
            for (Garment piece : kit.pieces()) {
                pieces.add(Garments.under(piece, parameters));
            }
        }

        List<PatchStack> run() {
            double body = sum(segmentArea);
            double touching = posture.contactShare() * parameters.get(ClothingParameter.SOFT_SURFACE) * body;
            double[] contactArea = new double[ZONES.length];
            for (Zone zone : ZONES) {
                Contact contact = contacts.get(zone);
                if (contact != null) {
                    contactArea[zone.ordinal()] =
                            Math.min(contact.share() * touching, Contact.MOST_OF_A_ZONE * zoneArea(zone));
                }
            }
            double[][] onPad = onPads(contactArea);

            List<Part> parts = new ArrayList<>();
            for (Zone zone : ZONES) {
                double pressed = contactArea[zone.ordinal()];
                double bare = zoneArea(zone) - pressed;
                for (Stretch stretch : stretches(zone)) {
                    parts.add(new Part(zone, bare * stretch.length(), false, stretch.worn()));
                }
                Contact contact = contacts.get(zone);
                if (contact != null) {
                    parts.add(new Part(zone, pressed, true, wornAt(zone, contact.at())));
                }
            }
            weigh(parts);
            List<PatchStack> patches = new ArrayList<>();
            for (Part part : parts) {
                patches.add(
                        part.pressed()
                                ? pressed(
                                        part.zone(),
                                        part.area(),
                                        part.worn(),
                                        onPad[part.zone().ordinal()])
                                : exposed(part.zone(), part.area(), part.worn()));
            }
            return List.copyOf(patches);
        }

        private record Part(Zone zone, double area, boolean pressed, List<Worn> worn) {}

        /** Spreads the cloth and fill of each piece over the skin it covers on this body, so that none is lost or made. */
        private void weigh(List<Part> parts) {
            for (Garment piece : pieces) {
                Weight weight = weight(piece);
                weight.whole += weight.textile.mass();
            }
            for (Part part : parts) {
                for (Worn worn : part.worn()) {
                    Weight weight = weight(worn.garment());
                    weight.spread += part.area()
                            * (weight.textile.clothPerArea() + worn.layer().fillArealMass());
                }
            }
        }

        private Weight weight(Garment piece) {
            return weights.computeIfAbsent(piece, Weight::new);
        }

        /** Cloth and fill of one piece, twice when it is worn twice. */
        private static final class Weight {
            final Textile textile;
            double whole;
            double spread;

            Weight(Garment piece) {
                textile = Textile.of(piece);
            }

            /** Mass per skin area over mass per garment area. */
            double perSkin() {
                return whole / spread;
            }
        }

        /** The layer taken apart for water; resistances are as they stand in the patch. */
        private LayerWater water(
                Worn piece,
                double density,
                double growth,
                double clothResistance,
                double fillResistance,
                double layerVapour,
                double gapResistance,
                double gapVapour) {
            double clothPerArea = weight(piece.garment()).textile.clothPerArea();
            double perSkinArea = weight(piece.garment()).perSkin();
            Fabric fabric = Garments.fabric(piece.garment().spec());
            WaterClass cloth = piece.clothClass();
            WaterClass fill = piece.fillClass();
            double clothThickness = piece.filled()
                    ? Cloth.of(fabric).thickness(clothPerArea)
                    : piece.layer().thickness();
            double flat = Math.max(piece.shell(), clothThickness / DENSEST_CLOTH_CONDUCTIVITY);
            double shellShare =
                    fill == null ? 1 : Math.min(1, Garments.shellVapour(fabric, clothPerArea) / piece.vapour(density));
            double fillVapour = (1 - shellShare) * layerVapour;
            RainFace face = RainFace.of(fabric, piece.layer().airPermeability());
            return new LayerWater(
                    cloth,
                    perSkinArea * clothPerArea,
                    cloth.cloth(clothPerArea, clothThickness, flat, parameters),
                    clothResistance,
                    layerVapour - fillVapour,
                    fill,
                    perSkinArea * piece.layer().fillArealMass(),
                    fill == null ? null : fill.fill(density, piece.layer().radiationConstant(), parameters),
                    fillResistance,
                    fillVapour,
                    gapResistance,
                    gapVapour,
                    face,
                    face.repels(piece.garment().spec().condition(), parameters),
                    face.passes(parameters),
                    face == RainFace.OPEN ? 0 : growth * parameters.get(ClothingParameter.FACE_HOLD),
                    parameters.get(
                            piece.lofty()
                                    ? ClothingParameter.SORPTION_TIME_LOFTY
                                    : ClothingParameter.SORPTION_TIME_THIN));
        }

        private double zoneArea(Zone zone) {
            return segmentArea[zone.segment().ordinal()] * zone.shareOfSegment();
        }

        private record Stretch(double length, List<Worn> worn) {}

        /** The zone cut at every hem, neighbours with the same cloth joined. */
        private List<Stretch> stretches(Zone zone) {
            List<Double> hems = new ArrayList<>(List.of(0.0, 1.0));
            for (Garment piece : pieces) {
                for (ZoneLayer layer : piece.pieces()) {
                    if (layer.zone() == zone) {
                        hems.add(layer.from());
                        hems.add(layer.to());
                    }
                }
            }
            hems.sort(Comparator.naturalOrder());
            List<Double> cuts = new ArrayList<>(List.of(0.0));
            for (double hem : hems) {
                if (hem - cuts.get(cuts.size() - 1) >= SLIVER && 1 - hem >= SLIVER) {
                    cuts.add(hem);
                }
            }
            cuts.add(1.0);
            List<Stretch> stretches = new ArrayList<>();
            for (int i = 1; i < cuts.size(); i++) {
                double from = cuts.get(i - 1);
                double to = cuts.get(i);
                List<Worn> worn = wornAt(zone, 0.5 * (from + to));
                int last = stretches.size() - 1;
                if (last >= 0 && stretches.get(last).worn().equals(worn)) {
                    stretches.set(last, new Stretch(stretches.get(last).length() + to - from, worn));
                } else {
                    stretches.add(new Stretch(to - from, worn));
                }
            }
            return stretches;
        }

        private List<Worn> wornAt(Zone zone, double at) {
            List<Worn> worn = new ArrayList<>();
            for (Garment piece : pieces) {
                for (ZoneLayer layer : piece.pieces()) {
                    if (layer.zone() == zone && layer.from() <= at && at <= layer.to()) {
                        worn.add(new Worn(piece, layer));
                    }
                }
            }
            return worn;
        }

        private PatchStack exposed(Zone zone, double area, List<Worn> worn) {
            int n = worn.size();
            double[] density = new double[n];
            double[] gap = new double[n];
            for (int i = 0; i < n; i++) {
                density[i] = worn.get(i).layer().fillDensity();
                gap[i] = usualGap(worn.get(i).cut().fit());
                if (worn.get(i).cut().fit() != Cut.Fit.SKIN) {
                    fitOver(worn, i, density, gap);
                }
            }
            CurvedStack stack = new CurvedStack(skinRadius(zone, segmentArea), zone == Zone.SCALP);
            double hanging = posture.isLying() || (zone != Zone.CHEST && zone != Zone.BACK)
                    ? 1
                    : 1 - parameters.get(ClothingParameter.SHOULDER_SHARE);
            Layers layers = new Layers(n);
            for (int i = 0; i < n; i++) {
                Worn piece = worn.get(i);
                double bent = bent(false);
                double gapFactor = stack.add(gap[i]);
                double thickness = piece.thickness(density[i]);
                double before = stack.growth();
                double factor = stack.add(thickness);
                double cloth = 0.5 * (before + stack.growth());
                double kept = bent(piece.lofty()) * factor;
                LayerWater water = water(
                        piece,
                        density[i],
                        stack.growth(),
                        kept * piece.shell(),
                        piece.filled() ? kept * piece.fill(density[i]) : 0,
                        factor * piece.vapour(density[i]),
                        bent * hanging * gapFactor * AirGap.resistance(gap[i]),
                        gapFactor * AirGap.vapourResistance(gap[i]));
                layers.set(i, piece, water, cloth * piece.arealHeatCapacity());
            }
            layers.draught = draught(worn, density);
            return layers.patch(zone, area, false, stack.growth(), 2 * stack.radius(), 0, 0, 0);
        }

        /** Openings of the outermost piece, as far as what is below leaves its room unfilled [L/(m2 s)]. */
        private double draught(List<Worn> worn, double[] density) {
            if (worn.isEmpty()) {
                return 0;
            }
            int outermost = worn.size() - 1;
            return Draught.permeability(
                    worn.get(outermost).room() - thickness(worn, outermost, density, 0),
                    parameters.get(ClothingParameter.OPENINGS_PERMEABILITY),
                    parameters.get(ClothingParameter.OPENINGS_SHARE));
        }

        private double usualGap(Cut.Fit fit) {
            return parameters.get(
                    switch (fit) {
                        case SKIN -> ClothingParameter.GAP_NEXT_TO_SKIN;
                        case MIDDLE -> ClothingParameter.GAP_MIDDLE;
                        case SHELL -> ClothingParameter.GAP_SHELL;
                        case SNUG -> ClothingParameter.GAP_SNUG;
                    });
        }

        /** Makes everything below piece i fit into its room: first its own gap goes, then the gaps below, then the loft. */
        private void fitOver(List<Worn> worn, int i, double[] density, double[] gap) {
            double room = worn.get(i).room();
            if (Double.isNaN(room)) {
                return;
            }
            double gaps = 0;
            for (int j = 0; j < i; j++) {
                gaps += gap[j];
            }
            double below = thickness(worn, i, density, 0);
            double spare = room - below - gaps;
            gap[i] = Math.min(gap[i], Math.max(0, spare));
            if (spare >= 0) {
                return;
            }
            double kept = gaps == 0 ? 0 : Math.max(0, 1 + spare / gaps);
            for (int j = 0; j < i; j++) {
                gap[j] *= kept;
            }
            if (below <= room) {
                return;
            }
            double low = 0;
            double high = parameters.get(ClothingParameter.SQUEEZE_PRESSURE);
            for (int step = 0; step < 40; step++) {
                double pressure = 0.5 * (low + high);
                if (thickness(worn, i, density, pressure) > room) {
                    low = pressure;
                } else {
                    high = pressure;
                }
            }
            for (int j = 0; j < i; j++) {
                density[j] = Math.max(density[j], worn.get(j).squeezed(high));
            }
        }

        private static double thickness(List<Worn> worn, int below, double[] density, double pressure) {
            double sum = 0;
            for (int j = 0; j < below; j++) {
                sum += worn.get(j).thickness(Math.max(density[j], worn.get(j).squeezed(pressure)));
            }
            return sum;
        }

        /** Share of a layer's resistance left by the posture on the part that is not pressed. */
        private double bent(boolean lofty) {
            return switch (posture) {
                case STANDING -> 1;
                case LYING_SUPINE -> lofty ? parameters.get(ClothingParameter.SUPINE_PUFFY) : 1;
                case CHAIR, SITTING_LEGS_OUT ->
                    parameters.get(lofty ? ClothingParameter.HALF_BENT_PUFFY : ClothingParameter.BENT_THIN);
                case SITTING_KNEES_UP, SITTING_CROSS_LEGGED, LYING_CURLED ->
                    parameters.get(lofty ? ClothingParameter.BENT_PUFFY : ClothingParameter.BENT_THIN);
            };
        }

        /** Pressed flat: no gaps, no curvature, fills squeezed by the body's weight. */
        private PatchStack pressed(Zone zone, double area, List<Worn> worn, double[] onPad) {
            double pressure = parameters.get(
                    posture.isLying() ? ClothingParameter.PRESSURE_LYING : ClothingParameter.PRESSURE_SITTING);
            double thin = parameters.get(ClothingParameter.THIN_UNDER_BODY);
            double fleece = parameters.get(ClothingParameter.FLEECE_UNDER_BODY);
            Layers layers = new Layers(worn.size());
            double thickness = 0;
            for (int i = 0; i < worn.size(); i++) {
                Worn piece = worn.get(i);
                double density = piece.squeezed(pressure);
                double cloth;
                double fill = 0;
                double vapour;
                if (zone == Zone.FOOT && !Double.isNaN(piece.sole())) {
                    density = piece.layer().fillDensity();
                    fill = piece.filled() ? piece.sole() * piece.fill(density) : 0;
                    cloth = piece.sole() * piece.layer().resistance() - fill;
                    vapour = piece.layer().vapourResistance();
                    thickness += piece.layer().thickness();
                } else if (piece.filled()) {
                    cloth = thin * piece.shell();
                    fill = piece.fill(density);
                    vapour = piece.vapour(density);
                    thickness += piece.thickness(density);
                } else {
                    double kept = piece.lofty() ? fleece : thin;
                    cloth = kept * piece.layer().resistance();
                    vapour = kept * piece.layer().vapourResistance();
                    thickness += kept * piece.layer().thickness();
                }
                layers.set(i, piece, water(piece, density, 1, cloth, fill, vapour, 0, 0), piece.arealHeatCapacity());
            }
            double clothing = sum(layers.resistance);
            double pad = padResistance(onPad, clothing);
            double capacity = 0;
            for (int k = 0; k < kit.pads().size(); k++) {
                capacity += onPad[k] * kit.pads().get(k).arealHeatCapacity();
            }
            double radius = zone == Zone.FOOT ? SOLE_RADIUS : posture.isLying() ? BACK_RADIUS : SEAT_RADIUS;
            double diameter = 2 * (skinRadius(zone, segmentArea) + thickness);
            return layers.patch(zone, area, true, 1, diameter, pad, capacity, radius);
        }

        /** Share of each zone's contact that lies on each pad [zone][pad]. */
        private double[][] onPads(double[] contactArea) {
            int pads = kit.pads().size();
            double footprint = parameters.get(ClothingParameter.PAD_FOOTPRINT);
            double[][] shares = new double[ZONES.length][pads];
            for (int k = 0; k < pads; k++) {
                double left = kit.pads().get(k).area();
                for (Zone zone : PAD_ORDER) {
                    double need = footprint * contactArea[zone.ordinal()];
                    if (need == 0 || posture == Posture.CHAIR) {
                        continue;
                    }
                    // Feet are lifted on the pad only when both find room.
                    double share = zone == Zone.FOOT && left < need ? 0 : Math.min(1, left / need);
                    shares[zone.ordinal()][k] = share;
                    left -= share * need;
                }
            }
            return shares;
        }

        /**
         * One resistance for a patch that lies partly on pads: the parts lose heat side by side through the clothing and what
         * is under it. Pads lie one on another, the larger share outermost.
         */
        private double padResistance(double[] onPad, double clothing) {
            int pads = onPad.length;
            Integer[] order = new Integer[pads];
            for (int k = 0; k < pads; k++) {
                order[k] = k;
            }
            Arrays.sort(order, Comparator.comparingDouble((Integer k) -> -onPad[k]));
            double conductance = 0;
            double covered = 1;
            double stacked = 0;
            for (int k = 0; k < pads; k++) {
                double share = onPad[order[k]];
                conductance += part(covered - share, clothing + stacked);
                stacked += kit.pads().get(order[k]).resistance();
                covered = share;
            }
            conductance += part(covered, clothing + stacked);
            double more = 1 / conductance - clothing;
            // where no pad lies the difference is what rounding leaves, and no resistance
            return more > LEAST_PAD ? more : 0;
        }

        private static double part(double share, double resistance) {
            return share <= 0 ? 0 : share / resistance;
        }

        /** Growing arrays of one patch. */
        private static final class Layers {
            final String[] ids;
            final double[] resistance;
            final double[] vapour;
            final double[] heatCapacity;
            final double[] mass;
            final LayerWater[] water;
            double leak;
            double draught;

            Layers(int layers) {
                ids = new String[layers];
                resistance = new double[layers];
                vapour = new double[layers];
                heatCapacity = new double[layers];
                mass = new double[layers];
                water = new LayerWater[layers];
            }

            void set(int i, Worn piece, LayerWater parts, double capacity) {
                ids[i] = piece.garment().spec().id();
                water[i] = parts;
                resistance[i] = parts.gapResistance() + (parts.clothResistance() + parts.fillResistance());
                vapour[i] = parts.gapVapour() + (parts.clothVapour() + parts.fillVapour());
                heatCapacity[i] = capacity;
                mass[i] = parts.clothMass() + parts.fillMass();
                leak += 1 / piece.layer().airPermeability();
            }

            PatchStack patch(
                    Zone zone,
                    double area,
                    boolean contact,
                    double growth,
                    double diameter,
                    double pad,
                    double padCapacity,
                    double contactRadius) {
                return new PatchStack(
                        zone,
                        area,
                        contact,
                        ids,
                        resistance,
                        vapour,
                        heatCapacity,
                        mass,
                        growth,
                        diameter,
                        ids.length == 0 ? Double.POSITIVE_INFINITY : 1 / leak + draught,
                        pad,
                        padCapacity,
                        contactRadius,
                        water,
                        false);
            }
        }
    }
}
