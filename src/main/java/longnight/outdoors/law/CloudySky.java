package longnight.outdoors.law;

/**
 * What cloud adds to a clear night sky. The engine uses {@link #UNSWORTH_MONTEITH}, right for low and middle cloud; at
 * half cover the rivals lie up to 9 K of sky temperature apart, for the kind of cloud matters.
 */
public enum CloudySky {
    /** Unsworth and Monteith 1975, as given in Flerchinger et al. 2009. */
    UNSWORTH_MONTEITH {
        @Override
        public double emissivity(double clear, double cloud) {
            return (1 - 0.84 * cloud) * clear + 0.84 * cloud;
        }
    },
    /** Konzelmann et al. 1994. */
    KONZELMANN {
        @Override
        public double emissivity(double clear, double cloud) {
            double c4 = cloud * cloud * cloud * cloud;
            return clear * (1 - c4) + 0.952 * c4;
        }
    },
    /** Maykut and Church 1973, as given in Flerchinger et al. 2009. */
    MAYKUT_CHURCH {
        @Override
        public double emissivity(double clear, double cloud) {
            return clear * (1 + 0.22 * StrictMath.pow(cloud, 2.75));
        }
    },
    /** Bolz 1949, as given in Flerchinger et al. 2009. */
    BOLZ {
        @Override
        public double emissivity(double clear, double cloud) {
            return clear * (1 + 0.22 * StrictMath.pow(cloud, 2.5));
        }
    },
    /** Sugita and Brutsaert 1993, high cloud, as given in Flerchinger et al. 2009. */
    SUGITA_BRUTSAERT {
        @Override
        public double emissivity(double clear, double cloud) {
            return clear * (1 + 0.0496 * StrictMath.pow(cloud, 2.45));
        }
    };

    /**
     * Emissivity [1] of a sky with cloud.
     *
     * @param clear emissivity of the same sky without cloud [1]
     * @param cloud cloud fraction [1], 0 to 1
     */
    public abstract double emissivity(double clear, double cloud);
}
