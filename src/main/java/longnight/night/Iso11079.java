package longnight.night;

import longnight.clothing.law.WindRatio;

/**
 * Required clothing insulation and exposure time in the cold after ISO 11079:2007, as a steady-state second opinion on a
 * whole body in dry clothing.
 *
 * <p><b>Source.</b> ISO 11079:2007; its equations from memory, checked against the temperatures that EN 342:2004 and EN
 * 14058:2004 state for classes of clothing. Uncertain details: whether the boundary layer in the evaporative resistance is
 * divided by the area factor (it is here; the other reading moves those temperatures by at most 0.3 K), the emissivity, and
 * the walking speed when none is given. Figures printed in the standard and figures of the program it points to disagree
 * (d'Ambrosio Alfano, Palella and Riccio 2013, Ergonomics 56:707): exposure times are a cross-check, never a verdict.
 *
 * <p><b>Valid</b> for air below 10 degC, 0.4 to 18 m/s, 58 to 400 W/m2, intrinsic insulation above 0.078 m2 K/W, no contact
 * with the ground, no rain. Insulations in m2 K/W, heat in W/m2 of body, temperatures in degC, as in the standard.
 */
public final class Iso11079 {

    /** Which state of the body counts as balanced. */
    public enum Criterion {
        /** Cool skin, vessels closed: the least clothing that keeps the balance. */
        MINIMAL(33.34, 0.0354),
        /** No strain. */
        NEUTRAL(35.7, 0.0285);

        private final double skinAtZero;
        private final double skinSlope;

        Criterion(double skinAtZero, double skinSlope) {
            this.skinAtZero = skinAtZero;
            this.skinSlope = skinSlope;
        }

        double skin(double heat) {
            return skinAtZero - skinSlope * heat;
        }

        double wettedness(double heat) {
            return this == MINIMAL ? 0.06 : 0.001 * heat;
        }
    }

    /**
     * Surroundings and work.
     *
     * @param heat     metabolic rate [W/m2], 58 to 400
     * @param air      air temperature [degC]
     * @param radiant  mean radiant temperature [degC]
     * @param speed    air speed [m/s]
     * @param walk     walking speed [m/s], see {@link #usualWalk}
     * @param humidity relative humidity over water [1], 0 to 1
     */
    public record Conditions(double heat, double air, double radiant, double speed, double walk, double humidity) {

        public Conditions {
            boolean sane = heat > 0
                    && heat < 1000
                    && Math.abs(air) < 150
                    && Math.abs(radiant) < 150
                    && speed >= 0
                    && speed < 100
                    && walk >= 0
                    && walk < 10
                    && humidity >= 0
                    && humidity <= 1;
            if (!sane) {
                throw new IllegalArgumentException("conditions out of range: heat " + heat + " W/m2, air " + air
                        + " degC, radiant " + radiant + " degC, speed " + speed + " m/s, walk " + walk
                        + " m/s, humidity "
                        + humidity);
            }
        }

        /** Whether the standard claims to hold here. */
        public boolean insideRange() {
            return air < 10 && speed >= 0.4 && speed <= 18 && heat >= 58 && heat <= 400;
        }
    }

    /** One heat balance. Temperatures [degC], heat [W/m2], area factor [1], boundary layer [m2 K/W]. */
    record Balance(
            double skin,
            double evaporation,
            double respiration,
            double areaFactor,
            double boundaryLayer,
            double surface,
            double dry,
            double storage) {}

    private static final double EMISSIVITY = 0.97;
    private static final double RADIATING_SHARE = 0.77;
    private static final double STEFAN_BOLTZMANN = 5.67e-8;
    private static final double MOISTURE_PERMEABILITY = 0.38;
    private static final double STILL_AIR = 0.085;
    /** Loss of body heat that ends the exposure, 144 kJ/m2 [W h/m2]. */
    private static final double ALLOWED_LOSS = 40;

    private static final double LEAST = 1e-4;
    private static final double MOST = 10;

    private Iso11079() {}

    /** Saturation pressure over water in the standard's own form [kPa]. */
    static double saturation(double celsius) {
        return 0.1333 * StrictMath.exp(18.6686 - 4030.183 / (celsius + 235));
    }

    /** Clothed over bare area in the standard's own form [1]. */
    static double areaFactor(double insulation) {
        return 1 + 1.197 * insulation;
    }

    /** Resistance of the air layer in wind and when walking [m2 K/W]. */
    static double boundaryLayer(double speed, double walk) {
        return 0.092 * StrictMath.exp(-0.15 * speed - 0.22 * walk) - 0.0045;
    }

    /** Walking speed the standard assumes when none is known [m/s]: 0.0052 (M - 58), 0 to 0.7. */
    public static double usualWalk(double heat) {
        return Math.min(0.7, Math.max(0, 0.0052 * (heat - 58)));
    }

    /** Heat balance with the given resultant insulation. */
    static Balance balance(Criterion criterion, Conditions at, double insulation) {
        double skin = criterion.skin(at.heat());
        double vapour = at.humidity() * saturation(at.air());
        double expired = 29 + 0.2 * at.air();
        double respiration =
                0.0173 * at.heat() * (saturation(expired) - vapour) + 0.0014 * at.heat() * (expired - at.air());
        double layer = boundaryLayer(at.speed(), at.walk());
        double factor = areaFactor(insulation);
        double evaporative = 0.06 / MOISTURE_PERMEABILITY * (layer / factor + insulation);
        double evaporation = criterion.wettedness(at.heat()) * (saturation(skin) - vapour) / evaporative;
        double surface = surface(skin, at, insulation, factor, layer);
        double dry = (skin - surface) / insulation;
        double storage = at.heat() - evaporation - respiration - dry;
        return new Balance(skin, evaporation, respiration, factor, layer, surface, dry, storage);
    }

    /**
     * Air and walls at which a given resultant insulation leaves a given storage [degC], between -110 and 60.
     *
     * @param heat       heat made [W/m2]
     * @param speed      air speed [m/s]
     * @param walk       walking speed [m/s]
     * @param humidity   [1]
     * @param insulation resultant [m2 K/W]
     * @param storage    [W/m2], negative where the body cools
     */
    public static double air(
            Criterion criterion,
            double heat,
            double speed,
            double walk,
            double humidity,
            double insulation,
            double storage) {
        double low = -110;
        double high = 60;
        for (int step = 0; step < 60; step++) {
            double air = 0.5 * (low + high);
            Conditions at = new Conditions(heat, air, air, speed, walk, humidity);
            if (balance(criterion, at, insulation).storage() < storage) {
                low = air;
            } else {
                high = air;
            }
        }
        return 0.5 * (low + high);
    }

    /** Temperature at which as much heat leaves the surface as reaches it. */
    private static double surface(double skin, Conditions at, double insulation, double factor, double layer) {
        double low = Math.min(at.air(), at.radiant()) - 1;
        double high = Math.max(skin, Math.max(at.air(), at.radiant())) + 1;
        for (int step = 0; step < 60; step++) {
            double surface = 0.5 * (low + high);
            double radiative = radiative(surface, at.radiant());
            // The layer holds both ways of loss at air temperature; what radiates sees another temperature.
            double convective = 1 / layer - radiative(surface, at.air());
            double out = factor * (convective * (surface - at.air()) + radiative * (surface - at.radiant()));
            if (out > (skin - surface) / insulation) {
                high = surface;
            } else {
                low = surface;
            }
        }
        return 0.5 * (low + high);
    }

    /** Coefficient of radiation between two temperatures [W/(m2 K)]: (a4 - b4)/(a - b) without its pole. */
    private static double radiative(double one, double other) {
        double a = one + 273;
        double b = other + 273;
        return STEFAN_BOLTZMANN * EMISSIVITY * RADIATING_SHARE * (a + b) * (a * a + b * b);
    }

    /** Required resultant insulation, IREQ [m2 K/W]: the one with which nothing is stored; at most 10. */
    public static double required(Criterion criterion, Conditions at) {
        double low = LEAST;
        double high = MOST;
        for (int step = 0; step < 60; step++) {
            double insulation = 0.5 * (low + high);
            if (balance(criterion, at, insulation).storage() < 0) {
                low = insulation;
            } else {
                high = insulation;
            }
        }
        return 0.5 * (low + high);
    }

    /**
     * Duration limited exposure [h]: until 144 kJ/m2 are lost; infinite when nothing is lost.
     *
     * @param insulation resultant insulation at hand [m2 K/W], above 0
     */
    public static double exposure(Criterion criterion, Conditions at, double insulation) {
        double storage = balance(criterion, at, insulation).storage();
        return storage >= 0 ? Double.POSITIVE_INFINITY : ALLOWED_LOSS / -storage;
    }

    /**
     * Resultant insulation from the basic one [m2 K/W], for wind, walking and air permeability; at least 0.0001.
     *
     * @param basic           intrinsic static insulation [m2 K/W]
     * @param airPermeability of the outer clothing [L/(m2 s)]
     */
    public static double resultant(double basic, double airPermeability, double speed, double walk) {
        double factor = areaFactor(basic);
        double total = basic + STILL_AIR / factor;
        // A resistance beyond the light range asks for the standard's own correction.
        double ratio = WindRatio.of(speed, airPermeability, walk, MOST);
        return Math.max(LEAST, total * ratio - boundaryLayer(speed, walk) / factor);
    }

    /** Basic insulation that gives a resultant one [m2 K/W]; at most 10. */
    public static double basic(double resultant, double airPermeability, double speed, double walk) {
        double low = 0;
        double high = MOST;
        for (int step = 0; step < 60; step++) {
            double basic = 0.5 * (low + high);
            if (resultant(basic, airPermeability, speed, walk) < resultant) {
                low = basic;
            } else {
                high = basic;
            }
        }
        return 0.5 * (low + high);
    }

    /** Basic insulation from a static total, skin to air [m2 K/W]; at least 0. */
    public static double basicFromTotal(double total) {
        double low = 0;
        double high = MOST;
        for (int step = 0; step < 60; step++) {
            double basic = 0.5 * (low + high);
            if (basic + STILL_AIR / areaFactor(basic) < total) {
                low = basic;
            } else {
                high = basic;
            }
        }
        return 0.5 * (low + high);
    }
}
