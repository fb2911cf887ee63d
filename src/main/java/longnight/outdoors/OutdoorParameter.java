package longnight.outdoors;

import longnight.assumption.ModelParameter;

/** Constants of the outdoor laws that are not exactly known. */
public enum OutdoorParameter implements ModelParameter {
    /** Factor of natural turbulence on forced convection. */
    TURBULENCE(
            1.3,
            1.0,
            1.6,
            "1",
            "engineering estimate, no source; range from de Dear et al. 1997 (1.0) to Ichihara et al. 1997 (1.6); Yu et al. 2020, Build Environ 106533, report up to 1.5"),
    /** Added to the sky temperature. */
    SKY_TEMPERATURE_OFFSET(
            0,
            -5,
            5,
            "K",
            "engineering estimate, no source; spread of published clear-sky emissivities in the cold (Flerchinger et al. 2009)"),
    /** Factor on the conductivity of snow under the person. */
    SNOW_CONDUCTIVITY_FACTOR(
            1, 0.6, 1.45, "1", "Sturm et al. 1997 and Jordan 1991 over Calonne et al. 2011 at 300 kg/m3"),
    /** Most that a snow surface lies below the air. */
    GROUND_DEPRESSION_LIMIT(10, 4, 14, "K", "engineering estimate, no source"),
    /** Least air speed at the body outdoors. */
    MINIMUM_WIND(0.15, 0.05, 0.3, "m/s", "engineering estimate, no source: drift of calm nights"),
    /** Factor on the area that catches rain and snow. */
    CATCHING_AREA(1, 0.7, 1.3, "1", "engineering estimate, no source: facing the wind or not, sharing over the body"),
    /** Share of dry snow that stays on cloth. */
    DRY_SNOW_STICKS(0.05, 0.02, 0.15, "1", "engineering estimate, no source: the rest bounces or is brushed off"),
    /** Liquid water in supercooled cloud. */
    RIME_WATER(2e-4, 5e-5, 5e-4, "kg/m3", "engineering estimate, no source: hill cloud, usually 0.1 to 0.5 g/m3"),
    /** Median diameter of cloud drops. */
    RIME_DROP(1.8e-5, 1.2e-5, 2.5e-5, "m", "common practice, no source: hill cloud, usually 15 to 20 um");

    private final Span span;

    OutdoorParameter(double nominal, double low, double high, String unit, String source) {
        span = new Span(nominal, low, high, unit, source);
    }

    @Override
    public Span span() {
        return span;
    }
}
