package longnight.night;

import java.util.ArrayList;
import java.util.List;
import longnight.air.SaturationVapour;
import longnight.body.law.SkinVapour;
import longnight.clothing.WaterClass;
import longnight.clothing.law.WetLoft;
import org.jspecify.annotations.Nullable;

/**
 * A square metre of skin held at one temperature under flat layers, with the engine's own water chain on top and heat stepped
 * beside it: what a guarded hot plate in a cold room sees. No body, no weather.
 */
final class LampPost {

    /** Surface film of still air, dry [m2 K/W] and for vapour [m2 Pa/W] (clothing standards, from memory). */
    static final double FILM = 0.085;

    static final double FILM_VAPOUR = 6.5;

    /** One slab; resistances [m2 K/W], [m2 Pa/W], masses [kg/m2]. */
    record Slab(
            double resistance,
            double vapour,
            double mass,
            @Nullable WaterClass kind,
            @Nullable WetLoft loft,
            double water,
            double sorptionTime) {}

    /** What one run gave, per square metre. */
    static final class Answer {
        /** Heat that the skin gave by conduction and as vapour [J]. */
        double conducted;

        double evaporated;
        /** Vapour from the skin, to the air [kg]. */
        double fromSkin;

        double toAir;
        /** Drip [kg]. */
        double drip;
        /** Water of all kinds in each slab at the end, at the start, and liquid and ice alone [kg]. */
        double[] end;

        double[] start;
        double[] free;
        double[] liquid;
        double[] celsius;
        double seconds;
        double closure;

        double heat() {
            return (conducted + evaporated) / seconds;
        }
    }

    double skin = 33;
    double air = -15;
    double humidity = 0.8;
    double film = FILM;
    double filmVapour = FILM_VAPOUR;
    /** Resistance of the skin to vapour [m2 Pa/W]. */
    double skinVapour = Water.SKIN / Water.PER_EVAPORATIVE;

    double sweat;
    double step = 30;
    boolean creeps = true;
    final List<Slab> slabs = new ArrayList<>();

    LampPost at(double celsius) {
        air = celsius;
        return this;
    }

    LampPost layer(double resistance, double vapour, double mass, WaterClass kind, double water) {
        slabs.add(new Slab(resistance, vapour, mass, kind, null, water, 1200));
        return this;
    }

    /** A batt cut into four; vapour resistance of still air, 46 m2 Pa/W for 0.4 m2 K/W. */
    LampPost batt(double resistance, double mass, WaterClass kind, @Nullable WetLoft loft, double perDryMass) {
        for (int i = 0; i < 4; i++) {
            slabs.add(
                    new Slab(resistance / 4, 115 * resistance / 4, mass / 4, kind, loft, perDryMass * mass / 4, 3600));
        }
        return this;
    }

    Answer run(double hours) {
        int n = slabs.size();
        int[] starts = new int[n + 1];
        for (int k = 0; k <= n; k++) {
            starts[k] = k;
        }
        Water w = new Water(1, new int[] {n}, starts, n, new double[] {1});
        double[] capacity = new double[n];
        double[] inner = new double[n];
        double[] hold = new double[n];
        double[] y = new double[n];
        for (int k = 0; k < n; k++) {
            Slab s = slabs.get(k);
            w.mass[k] = s.mass;
            w.kind[k] = s.kind;
            w.bindingTime[k] = s.sorptionTime;
            capacity[k] = 1400 * s.mass + 50;
            hold[k] = s.kind == null ? 0 : s.kind.hold() * s.mass;
        }
        double airPressure = humidity * SaturationVapour.overWater(air + 273.15);
        double pSkin = SkinVapour.saturation(skin);
        link(w, inner);
        double whole = film;
        for (Slab s : slabs) {
            whole += s.resistance;
        }
        double gone = 0;
        for (int k = 0; k < n; k++) {
            y[k] = skin - (skin - air) * (gone + 0.5 * slabs.get(k).resistance) / whole;
            gone += slabs.get(k).resistance;
        }
        w.balance(y, new double[] {pSkin}, airPressure);
        for (int k = 0; k < n; k++) {
            w.liquid[k] = slabs.get(k).water;
        }
        Answer a = new Answer();
        a.start = held(w);
        double before = w.held();
        int steps = (int) Math.round(hours * 3600 / step);
        for (int i = 0; i < steps; i++) {
            double beyond = link(w, inner);
            w.clearSource(0);
            if (creeps && w.hasLiquid(0)) {
                w.creep(0, step, hold, 1, 1, 60);
            }
            w.advance(0, step, y, skin, pSkin, airPressure, sweat, inner, beyond, air, capacity);
            heat(n, inner, beyond, capacity, w.source, y);
            a.conducted += inner[0] * (skin - y[0]) * step;
            a.evaporated += Water.LATENT * w.fromSkin[0] * step;
        }
        a.seconds = steps * step;
        a.fromSkin = w.skinTotal;
        a.toAir = w.airTotal;
        a.drip = w.dripTotal;
        a.end = held(w);
        a.free = new double[n];
        for (int k = 0; k < n; k++) {
            a.free[k] = w.liquid[k] + w.ice[k];
        }
        a.liquid = w.liquid.clone();
        a.celsius = y.clone();
        a.closure = w.held() - before - w.skinTotal + w.airTotal + w.dripTotal;
        return a;
    }

    private static double[] held(Water w) {
        double[] sum = new double[w.liquid.length];
        for (int k = 0; k < sum.length; k++) {
            sum[k] = w.liquid[k] + w.ice[k] + w.bound[k];
        }
        return sum;
    }

    /** Sets the links between the middles; returns the conductance from the last middle to the air. */
    private double link(Water w, double[] inner) {
        double before = 0;
        double beforeVapour = skinVapour;
        for (int k = 0; k < slabs.size(); k++) {
            Slab s = slabs.get(k);
            double now = s.resistance;
            if (s.loft != null) {
                now *= s.loft.resistance(w.liquid[k] / s.mass, w.ice[k] / s.mass);
            }
            inner[k] = 1 / (before + 0.5 * now);
            before = 0.5 * now;
            w.inward[k] = 1 / (Water.PER_EVAPORATIVE * (beforeVapour + 0.5 * s.vapour));
            beforeVapour = 0.5 * s.vapour;
        }
        w.wetSkin[0] = Math.max(w.inward[0], 1 / (Water.PER_EVAPORATIVE * (1.1 + 0.5 * slabs.get(0).vapour)));
        w.toAir[0] = 1 / (Water.PER_EVAPORATIVE * (beforeVapour + filmVapour));
        return 1 / (before + film);
    }

    /** One implicit step of heat through the chain with its sources held. */
    private void heat(int n, double[] inner, double beyond, double[] capacity, double[] source, double[] y) {
        double[] d = new double[n];
        double[] r = new double[n];
        for (int k = 0; k < n; k++) {
            double out = k + 1 < n ? inner[k + 1] : beyond;
            d[k] = capacity[k] / step + inner[k] + out;
            r[k] = capacity[k] / step * y[k]
                    + source[k]
                    + (k == 0 ? inner[0] * skin : 0)
                    + (k + 1 < n ? 0 : beyond * air);
            if (k > 0) {
                double f = inner[k] / d[k - 1];
                d[k] -= f * inner[k];
                r[k] += f * r[k - 1];
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            y[k] = (r[k] + (k + 1 < n ? inner[k + 1] * y[k + 1] : 0)) / d[k];
        }
    }
}
