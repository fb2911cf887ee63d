package longnight.proof;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import longnight.clothing.Outfit;
import longnight.clothing.law.WholeBody;
import longnight.figure.Zone;
import longnight.night.Exposure;
import longnight.night.ModelChoice;

/** The runs of one experiment under one model and one set of assumptions, each made when first asked for. */
final class Runs {
    /** Index of moisture permeability of ordinary cloth [1], ISO 9920:2007 (from memory). */
    private static final double PERMEABILITY = 0.38;

    /** Where a cover is searched for [clo]: from a summer blanket to the thickest bag. */
    private static final double THINNEST = 1.2;

    private static final double THICKEST = 5;
    private static final int HALVINGS = 14;

    private final Experiment experiment;
    private final ModelChoice choice;
    private final Experiment.Variant variant;
    private final Map<String, Run> made = new HashMap<>();

    Runs(Experiment experiment, ModelChoice choice, Experiment.Variant variant) {
        this.experiment = experiment;
        this.choice = choice;
        this.variant = variant;
    }

    Run get(String id) {
        Run run = made.get(id);
        if (run == null) {
            run = make(id);
            made.put(id, run);
        }
        return run;
    }

    private Run make(String id) {
        Case of = experiment.cases().get(id);
        if (of == null) {
            throw new IllegalArgumentException("no run " + id + " in " + experiment.id());
        }
        Case.Wear wear = of.wear();
        if (wear instanceof Case.Parts parts) {
            return run(of, new Outfit.Given(parts.resistance(), PERMEABILITY), false, Double.NaN);
        }
        if (wear instanceof Case.Garments garments) {
            return run(of, garments.kit(), false, Double.NaN);
        }
        if (wear instanceof Case.Total total) {
            return under(of, total.resistance());
        }
        return searched(of, (Case.Cover) wear);
    }

    private Run under(Case of, double total) {
        return run(of, everywhere(intrinsic(total)), true, total / WholeBody.CLO);
    }

    private Run run(Case of, Outfit outfit, boolean film, double cover) {
        Exposure exposure = Exposure.run(of.setup(variant, outfit, film), choice);
        return new Run(
                exposure,
                of.lead(),
                of.person(variant).mass(),
                of.person(variant).bodyFat(),
                cover);
    }

    private Run searched(Case of, Case.Cover cover) {
        double wanted = cover.reading().at(get(cover.than()), cover.thanMinute(), 0) - cover.less();
        double low = THINNEST;
        double high = THICKEST;
        for (int i = 0; i < HALVINGS; i++) {
            double clo = 0.5 * (low + high);
            if (cover.reading().at(under(of, clo * WholeBody.CLO), cover.minute(), 0) < wanted) {
                low = clo;
            } else {
                high = clo;
            }
        }
        Run run = under(of, low * WholeBody.CLO);
        // no cover within the limits does what is asked: then nothing of the run may be told
        return low > THINNEST && high < THICKEST ? run : run.withoutFigures();
    }

    /** The resistance without film that makes a total [m2 K/W]. */
    private static double intrinsic(double total) {
        double low = 0;
        double high = total;
        for (int i = 0; i < 60; i++) {
            double r = 0.5 * (low + high);
            if (WholeBody.total(r) < total) {
                low = r;
            } else {
                high = r;
            }
        }
        return low;
    }

    private static Outfit everywhere(double resistance) {
        Map<Zone, Double> on = new EnumMap<>(Zone.class);
        for (Zone zone : Zone.values()) {
            on.put(zone, resistance);
        }
        return new Outfit.Given(on, PERMEABILITY);
    }
}
