package longnight.outdoors;

import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import longnight.air.Humidity;
import longnight.air.SaturationVapour;
import longnight.air.StandardAtmosphere;
import longnight.air.Temperature;
import longnight.assumption.ParameterSet;
import longnight.figure.BodySegment;
import longnight.figure.Posture;
import longnight.outdoors.law.ClearSky;
import longnight.outdoors.law.CloudySky;
import longnight.outdoors.law.PostureExchange;
import longnight.outdoors.law.Radiation;
import longnight.outdoors.law.Rime;
import longnight.outdoors.law.SnowSurface;
import longnight.outdoors.law.WindProfile;

/**
 * A recorded night at a site, as a person in one posture meets it. Everything costly is worked out once at the record's
 * own times; between them values run straight, precipitation in steps.
 *
 * <ul>
 *   <li>Vapour is carried over from the record and held at or below saturation at the site.
 *   <li>Drops of a supercooled cloud hang in air whose vapour is held at saturation over ice: the record's own humidity over
 *       water tells that they are there.
 *   <li>Behind shelter the air is never less turbulent than the nominal value: lee wakes are rough (engineering estimate, no
 *       source).
 *   <li>Pressure is the record's. Where it is unknown it is the standard one for the site's altitude; where the record's mean
 *       is more than 4 % away from that, the record belongs to another altitude, and its ups and downs are kept around the
 *       site's standard pressure.
 *   <li>A recorded long-wave radiation sets the emissivity of the sky relative to the record's air; otherwise Prata 1996 with
 *       the cloud of Unsworth and Monteith 1975.
 *   <li>The ground surface lies below the air by the depression of a snow surface under the same sky, over the site's ground
 *       temperature, times the ground's own
 *       share, at most {@link OutdoorParameter#GROUND_DEPRESSION_LIMIT}. It is never above air temperature.
 *   <li>Unknown ground temperature: under snow the mean air of the record, within -20 and 0 degC; elsewhere the same within
 *       -10 and 15 degC (engineering estimate, no source: what lies below a night's surface lags behind days and weeks).
 * </ul>
 */
public final class SiteClimate implements Surroundings {

    /** Weather moves station pressure by some 4 % around the standard atmosphere: engineering estimate, no source. */
    private static final double PRESSURE_SPREAD = 0.04;

    /** Snow of 0.2 m and 0.2 W/(m K) between surface and depth [W/(m2 K)]: engineering estimate, no source. */
    private static final double SNOW_CONDUCTANCE = 1;

    /** Roughness of the snow surface itself, whatever stands around it [m], textbook. */
    private static final double SURFACE_ROUGHNESS = 0.001;

    private final Site site;
    private final Weather weather;
    private final ParameterSet<OutdoorParameter> parameters;
    private final double[] time;
    private final double[] air;
    private final double[] vapour;
    private final double[] pressure;
    private final double[] wind10;
    /** As an upright and as a lying person sees it. */
    private final double[][] radiant;

    private final double[] sky;
    private final double[] groundSurface;
    private final double[] precipitation;
    private final double[] cloud;
    private final double[] supercooled;
    private final double[][] windFactor = new double[Posture.values().length][BodySegment.COUNT];
    private final Posture posture;
    private final double leastWind;
    private final double turbulence;
    private final double groundDeep;
    private final Ground ground;

    /** Works out the night at the record's times. */
    public SiteClimate(Site site, Weather weather, Posture posture, ParameterSet<OutdoorParameter> parameters) {
        this.site = site;
        this.weather = weather;
        this.parameters = parameters;
        int n = weather.time().length;
        time = weather.time();
        wind10 = weather.wind10();
        precipitation = weather.precipitation();
        cloud = weather.cloud();
        air = DoubleStream.of(weather.airCelsius())
                .map(t -> t + site.temperatureOffset())
                .toArray();
        pressure = pressureAt(site.altitude(), weather.pressure());
        vapour = new double[n];
        supercooled = new double[n];
        radiant = new double[2][n];
        this.posture = posture;
        sky = new double[n];
        groundSurface = new double[n];
        leastWind = parameters.get(OutdoorParameter.MINIMUM_WIND);
        turbulence = site.shelter() < 1
                ? Math.max(OutdoorParameter.TURBULENCE.nominal(), parameters.get(OutdoorParameter.TURBULENCE))
                : parameters.get(OutdoorParameter.TURBULENCE);
        ground = scaled(site.ground(), parameters.get(OutdoorParameter.SNOW_CONDUCTIVITY_FACTOR));
        groundDeep = deep(site);
        for (Posture held : Posture.values()) {
            for (BodySegment segment : BodySegment.values()) {
                windFactor[held.ordinal()][segment.ordinal()] = site.shelter()
                        * WindProfile.factor(PostureExchange.height(held, segment), site.roughnessLength());
            }
        }

        double upright = Radiation.skySeenUpright(site.horizonAngle());
        double level = Radiation.skySeenLevel(site.horizonAngle());
        double groundSkyShare = site.skyGap() * level;
        // Lying, the upper side counts, a half cylinder: half level, half upright.
        double[] groundShare = {0.5, 0.25};
        double[] skyShare = {site.skyGap() * upright, site.skyGap() * 0.5 * (level + upright)};
        double wind2Factor = site.shelter() * WindProfile.factor(SnowSurface.HEIGHT, site.roughnessLength());
        double limit = parameters.get(OutdoorParameter.GROUND_DEPRESSION_LIMIT);
        double skyOffset = parameters.get(OutdoorParameter.SKY_TEMPERATURE_OFFSET);
        for (int i = 0; i < n; i++) {
            double recorded = Temperature.kelvin(weather.airCelsius()[i]);
            double here = Temperature.kelvin(air[i]);
            // a warmer site than the record's is drier; a colder one is no cloud where the record is none
            double humidity = weather.relativeHumidity()[i];
            double carried = humidity * SaturationVapour.overWater(recorded) / SaturationVapour.overWater(here);
            supercooled[i] = Rime.cloud(air[i], Math.min(humidity, carried));
            vapour[i] = Humidity.capped(Humidity.vapourPressure(recorded, weather.relativeHumidity()[i]), here);
            double emissivity = Double.isNaN(weather.skyLongwave()[i])
                    ? CloudySky.UNSWORTH_MONTEITH.emissivity(ClearSky.PRATA.emissivity(here, vapour[i]), cloud[i])
                    : weather.skyLongwave()[i] / Radiation.black(recorded);
            double skyKelvin = here * Math.sqrt(Math.sqrt(emissivity)) + skyOffset;
            double incoming =
                    groundSkyShare * Radiation.black(skyKelvin) + (1 - groundSkyShare) * Radiation.black(here);
            double snow = SnowSurface.temperature(
                    here,
                    incoming,
                    Math.max(leastWind, wind10[i] * wind2Factor),
                    SURFACE_ROUGHNESS,
                    pressure[i],
                    SNOW_CONDUCTANCE,
                    Temperature.kelvin(groundDeep));
            double depression = ground.depressionShare() * Math.min(limit, Math.max(0, here - snow));
            double surface = here - depression;
            if (ground.snow()) {
                surface = Math.min(surface, Temperature.ZERO_CELSIUS);
            }
            sky[i] = Temperature.celsius(skyKelvin);
            groundSurface[i] = Temperature.celsius(surface);
            for (int lying = 0; lying < 2; lying++) {
                radiant[lying][i] = Temperature.celsius(Radiation.meanRadiant(
                        skyShare[lying],
                        skyKelvin,
                        groundShare[lying],
                        surface,
                        1 - skyShare[lying] - groundShare[lying],
                        here));
            }
        }
    }

    @Override
    public ParameterSet<OutdoorParameter> parameters() {
        return parameters;
    }

    @Override
    public SiteClimate with(ParameterSet<OutdoorParameter> others) {
        return others.equals(parameters) ? this : new SiteClimate(site, weather, posture, others);
    }

    @Override
    public void at(double when, OutdoorState out) {
        at(when, posture, out);
    }

    @Override
    public void at(double when, Posture held, OutdoorState out) {
        int i = Math.min(Ranges.indexBefore(time, when), time.length - 2);
        double f = Math.min(1, Math.max(0, (when - time[i]) / (time[i + 1] - time[i])));
        out.airCelsius = between(air, i, f);
        out.vapourPressure = Humidity.capped(between(vapour, i, f), Temperature.kelvin(out.airCelsius));
        out.pressure = between(pressure, i, f);
        out.wind10 = between(wind10, i, f);
        for (int s = 0; s < BodySegment.COUNT; s++) {
            out.windAt[s] = Math.max(leastWind, out.wind10 * windFactor[held.ordinal()][s]);
        }
        out.radiantCelsius = between(radiant[held.isLying() ? 1 : 0], i, f);
        out.skyCelsius = between(sky, i, f);
        out.groundSurfaceCelsius = between(groundSurface, i, f);
        out.groundDeepCelsius = groundDeep;
        out.precipitation = precipitation[f < 1 ? i : i + 1];
        out.cloud = between(cloud, i, f);
        out.supercooledCloud = between(supercooled, i, f);
    }

    @Override
    public SiteClimate under(UnaryOperator<Weather> change) {
        return new SiteClimate(site, change.apply(weather), posture, parameters);
    }

    @Override
    public SiteClimate elsewhere(UnaryOperator<Site> change) {
        return new SiteClimate(change.apply(site), weather, posture, parameters);
    }

    @Override
    public boolean hasWeather() {
        return true;
    }

    @Override
    public double firstTime() {
        return time[0];
    }

    @Override
    public double lastTime() {
        return time[time.length - 1];
    }

    @Override
    public double[] knots() {
        return time.clone();
    }

    @Override
    public double turbulence() {
        return turbulence;
    }

    @Override
    public Ground ground() {
        return ground;
    }

    private static double between(double[] values, int i, double f) {
        return values[i] + f * (values[i + 1] - values[i]);
    }

    private static double[] pressureAt(double altitude, double[] recorded) {
        double standard = StandardAtmosphere.pressure(altitude);
        double mean = DoubleStream.of(recorded)
                .filter(p -> !Double.isNaN(p))
                .average()
                .orElse(standard);
        double factor = Math.abs(mean / standard - 1) > PRESSURE_SPREAD ? standard / mean : 1;
        return DoubleStream.of(recorded)
                .map(p -> Double.isNaN(p) ? standard : p * factor)
                .toArray();
    }

    private static Ground scaled(Ground ground, double snowFactor) {
        if (!ground.snow()) {
            return ground;
        }
        return new Ground(
                ground.name(),
                ground.conductivity() * snowFactor,
                ground.heatCapacity(),
                ground.depressionShare(),
                true);
    }

    private double deep(Site site) {
        if (!Double.isNaN(site.groundCelsius())) {
            return site.groundCelsius();
        }
        double mean = DoubleStream.of(air).average().orElseThrow();
        return ground.snow() ? Math.min(0, Math.max(-20, mean)) : Math.min(15, Math.max(-10, mean));
    }
}
