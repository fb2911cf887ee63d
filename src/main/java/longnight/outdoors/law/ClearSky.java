package longnight.outdoors.law;

import longnight.air.Humidity;
import longnight.air.Temperature;

/**
 * Emissivity of a cloudless night sky from the air at screen height. The engine uses {@link #PRATA}; the others are
 * published rivals. Fitted on warm data, {@link #BRUTSAERT}, {@link #SWINBANK} and {@link #BRUNT} give far too cold a sky
 * below -15 degC.
 */
public enum ClearSky {
    /** Prata 1996, as given in Flerchinger et al. 2009; precipitable water in g/cm2. */
    PRATA {
        @Override
        public double emissivity(double kelvin, double vapourPressure) {
            double water = 46.5 * hectopascal(vapourPressure) / kelvin;
            return 1 - (1 + water) * StrictMath.exp(-Math.sqrt(1.2 + 3 * water));
        }
    },
    /** Dilley and O'Brien 1998, as given in Flerchinger et al. 2009; precipitable water in kg/m2. */
    DILLEY_OBRIEN {
        @Override
        public double emissivity(double kelvin, double vapourPressure) {
            double water = 465 * hectopascal(vapourPressure) / kelvin;
            double warmth = StrictMath.pow(kelvin / 273.16, 6);
            return (59.38 + 113.7 * warmth + 96.96 * Math.sqrt(water / 25)) / Radiation.black(kelvin);
        }
    },
    /** Berdahl and Martin 1984, Solar Energy 32:663, without the terms for hour and pressure. */
    BERDAHL_MARTIN {
        @Override
        public double emissivity(double kelvin, double vapourPressure) {
            double dew = Temperature.celsius(Humidity.dewPoint(vapourPressure)) / 100;
            return 0.711 + 0.56 * dew + 0.73 * dew * dew;
        }
    },
    /** Brunt 1932, as given in Flerchinger et al. 2009. */
    BRUNT {
        @Override
        public double emissivity(double kelvin, double vapourPressure) {
            return 0.52 + 0.065 * Math.sqrt(hectopascal(vapourPressure));
        }
    },
    /** Brutsaert 1975, as given in Flerchinger et al. 2009. */
    BRUTSAERT {
        @Override
        public double emissivity(double kelvin, double vapourPressure) {
            return 1.24 * StrictMath.pow(hectopascal(vapourPressure) / kelvin, 1.0 / 7.0);
        }
    },
    /** Swinbank 1963, as given in Flerchinger et al. 2009. */
    SWINBANK {
        @Override
        public double emissivity(double kelvin, double vapourPressure) {
            return 9.365e-6 * kelvin * kelvin;
        }
    },
    /** Idso 1981, as given in Flerchinger et al. 2009. */
    IDSO {
        @Override
        public double emissivity(double kelvin, double vapourPressure) {
            return 0.70 + 5.95e-5 * hectopascal(vapourPressure) * StrictMath.exp(1500 / kelvin);
        }
    },
    /** Idso and Jackson 1969, as given in Flerchinger et al. 2009. */
    IDSO_JACKSON {
        @Override
        public double emissivity(double kelvin, double vapourPressure) {
            double below = 273.16 - kelvin;
            return 1 - 0.261 * StrictMath.exp(-7.77e-4 * below * below);
        }
    },
    /** Angstrom 1918, as given in Flerchinger et al. 2009. */
    ANGSTROM {
        @Override
        public double emissivity(double kelvin, double vapourPressure) {
            return 0.83 - 0.18 * StrictMath.pow(10, -0.067 * hectopascal(vapourPressure));
        }
    },
    /** Konzelmann et al. 1994, Greenland ice; vapour pressure in Pa. */
    KONZELMANN {
        @Override
        public double emissivity(double kelvin, double vapourPressure) {
            return 0.23 + 0.484 * StrictMath.pow(vapourPressure / kelvin, 1.0 / 8.0);
        }
    },
    /** Maykut and Church 1973, Alaska, a constant (from memory). */
    MAYKUT_CHURCH {
        @Override
        public double emissivity(double kelvin, double vapourPressure) {
            return 0.7855;
        }
    },
    /** Koenig-Langlo and Augstein 1994, polar stations, a constant (from memory). */
    KOENIG_LANGLO {
        @Override
        public double emissivity(double kelvin, double vapourPressure) {
            return 0.765;
        }
    };

    /**
     * Emissivity [1] of the whole sky as if it had air temperature.
     *
     * @param kelvin         air temperature at screen height [K]
     * @param vapourPressure at screen height [Pa]
     */
    public abstract double emissivity(double kelvin, double vapourPressure);

    private static double hectopascal(double pascal) {
        return pascal / 100;
    }
}
