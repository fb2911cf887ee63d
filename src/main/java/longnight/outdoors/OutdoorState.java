package longnight.outdoors;

import longnight.figure.BodySegment;

/** What surrounds the person at one moment; filled in place by {@link Surroundings#at}. Mutable, one per run. */
public final class OutdoorState {
    /** Air temperature [degC]. */
    public double airCelsius;
    /** Water vapour pressure of the air [Pa], never above saturation over ice (below 0 degC) or water. */
    public double vapourPressure;
    /** Station pressure [Pa]. */
    public double pressure;
    /** Wind at 10 m in the open [m/s]; in a chamber the air speed. */
    public double wind10;
    /** Air speed at each segment in the person's posture [m/s], not below 0.05. Index: {@link BodySegment#ordinal()}. */
    public final double[] windAt = new double[BodySegment.COUNT];
    /** Mean radiant temperature seen by the exposed surface [degC]. */
    public double radiantCelsius;
    /** Sky temperature [degC], for the report. */
    public double skyCelsius;
    /** Temperature of the ground or snow surface [degC]. */
    public double groundSurfaceCelsius;
    /** Temperature of the undisturbed ground under the person [degC]. */
    public double groundDeepCelsius;
    /** Precipitation, liquid equivalent [mm/h]. */
    public double precipitation;
    /** Cloud fraction [1]. */
    public double cloud;
    /** How much of the air is supercooled cloud [1], by the humidity as observed. */
    public double supercooledCloud;
}
