package longnight.outdoors;

import java.util.Arrays;
import java.util.List;
import longnight.air.Humidity;
import longnight.air.Temperature;
import org.jspecify.annotations.Nullable;

/** A climatic chamber: uniform air and walls that follow a schedule, the air as turbulent as room air is. */
public final class Chamber implements Surroundings {

    /** Least air speed in a room [m/s], the person's own plume apart: engineering estimate, no source. */
    private static final double LEAST_SPEED = 0.05;

    /**
     * Turbulence of room air [1]: engineering estimate. Natural convection of a seated manikin and the cylinder law times 1.3
     * are the room law of ISO 7730:2005 within 8 % from 0.1 to 1 m/s; without the factor they lie a tenth to a fifth below.
     */
    private static final double ROOM_TURBULENCE = 1.3;

    /**
     * What the chamber is set to from a time on.
     *
     * @param time             seconds from the start
     * @param airCelsius       [degC], -90 to 60
     * @param radiantCelsius   walls [degC], -90 to 60; NaN for air temperature
     * @param airSpeed         at the body [m/s], 0 to 75; taken as 0.05 below that
     * @param relativeHumidity over liquid water [1], 0 to 1
     */
    public record Setting(
            double time, double airCelsius, double radiantCelsius, double airSpeed, double relativeHumidity) {

        /** @throws IllegalArgumentException when a value is NaN (walls excepted) or outside its range */
        public Setting {
            Ranges.require("chamber time [s]", time, -1e9, 1e9);
            Ranges.require("chamber airCelsius [degC]", airCelsius, -90, 60);
            if (!Double.isNaN(radiantCelsius)) {
                Ranges.require("chamber radiantCelsius [degC]", radiantCelsius, -90, 60);
            }
            Ranges.require("chamber airSpeed [m/s]", airSpeed, 0, 75);
            Ranges.require("chamber relativeHumidity [1]", relativeHumidity, 0, 1);
        }
    }

    private final Setting[] settings;
    private final double[] times;
    private final double lastTime;
    private final boolean ramps;
    private final double pressure;
    private final @Nullable Ground ground;

    private Chamber(List<Setting> settings, double lastTime, boolean ramps, double pressure, @Nullable Ground ground) {
        if (settings.isEmpty()) {
            throw new IllegalArgumentException("a chamber needs at least one setting");
        }
        this.settings = settings.toArray(new Setting[0]);
        this.times = Arrays.stream(this.settings).mapToDouble(Setting::time).toArray();
        Ranges.requireRising("chamber time [s]", times);
        Ranges.require("chamber lastTime [s]", lastTime, times[times.length - 1], 1e9);
        Ranges.require("chamber pressure [Pa]", pressure, 3e4, 1.1e5);
        this.lastTime = lastTime;
        this.ramps = ramps;
        this.pressure = pressure;
        this.ground = ground;
    }

    /** Each setting holds until the next one begins; the last until {@code lastTime} [s]. Ground null: a mesh couch. */
    public static Chamber stepwise(List<Setting> settings, double lastTime, double pressure, @Nullable Ground ground) {
        return new Chamber(settings, lastTime, false, pressure, ground);
    }

    /** Values run straight from one setting to the next; the last holds until {@code lastTime} [s]. Ground null: a mesh couch. */
    public static Chamber ramped(List<Setting> settings, double lastTime, double pressure, @Nullable Ground ground) {
        return new Chamber(settings, lastTime, true, pressure, ground);
    }

    @Override
    public void at(double time, OutdoorState out) {
        int i = Ranges.indexBefore(times, time);
        int j = ramps && i + 1 < settings.length ? i + 1 : i;
        double f = j == i ? 0 : Math.min(1, Math.max(0, (time - times[i]) / (times[j] - times[i])));
        Setting a = settings[i];
        Setting b = settings[j];
        out.airCelsius = mix(a.airCelsius, b.airCelsius, f);
        out.radiantCelsius = mix(walls(a), walls(b), f);
        out.wind10 = Math.max(LEAST_SPEED, mix(a.airSpeed, b.airSpeed, f));
        Arrays.fill(out.windAt, out.wind10);
        out.vapourPressure = Humidity.vapourPressure(
                Temperature.kelvin(out.airCelsius), mix(a.relativeHumidity, b.relativeHumidity, f));
        out.pressure = pressure;
        out.skyCelsius = out.radiantCelsius;
        out.groundSurfaceCelsius = out.airCelsius;
        out.groundDeepCelsius = out.airCelsius;
        out.precipitation = 0;
        out.cloud = 1;
        out.supercooledCloud = 0;
    }

    @Override
    public double firstTime() {
        return times[0];
    }

    @Override
    public double lastTime() {
        return lastTime;
    }

    @Override
    public double[] knots() {
        return times.clone();
    }

    @Override
    public double[] jumps() {
        return ramps ? new double[0] : times.clone();
    }

    @Override
    public double turbulence() {
        return ROOM_TURBULENCE;
    }

    @Override
    public @Nullable Ground ground() {
        return ground;
    }

    private static double walls(Setting setting) {
        return Double.isNaN(setting.radiantCelsius) ? setting.airCelsius : setting.radiantCelsius;
    }

    private static double mix(double a, double b, double f) {
        return a + f * (b - a);
    }
}
