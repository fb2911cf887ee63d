package longnight.night;

import longnight.air.SaturationVapour;
import longnight.assumption.ParameterSet;
import longnight.clothing.ClothingParameter;
import longnight.clothing.LayerWater;
import longnight.clothing.PatchStack;
import longnight.clothing.law.FaceWetting;
import longnight.figure.Zone;
import longnight.outdoors.Ground;
import longnight.outdoors.OutdoorParameter;
import longnight.outdoors.law.Precipitation;
import longnight.outdoors.law.Rain;
import longnight.outdoors.law.Rime;

/** Water that comes to the clothing from outside: rain, snow, rime, and melt under the seat. */
final class Wetting {

    private static final double KELVIN = 273.15;
    /** Heat of liquid water [J/(kg K)] (textbook). */
    private static final double WATER_HEAT = 4186;
    /** Snow and rime that cling to the outermost cloth before they fall off [kg/m2] (engineering estimate, no source). */
    private static final double ICE_HOLD = 1.0;

    private final Network net;
    private final double catching;
    private final double drySnowSticks;
    private final double finishHalfTime;
    private final double rimeDrop;
    private final double rimeWater;
    private final double soaked;
    private boolean falls;
    private double snowShare;
    private double wetBulb;
    private double rime;

    Wetting(Network net, ParameterSet<ClothingParameter> clothing) {
        this.net = net;
        ParameterSet<OutdoorParameter> outdoors = net.surroundings.parameters();
        catching = outdoors.get(OutdoorParameter.CATCHING_AREA);
        drySnowSticks = outdoors.get(OutdoorParameter.DRY_SNOW_STICKS);
        finishHalfTime = clothing.get(ClothingParameter.FINISH_HALF_TIME);
        rimeDrop = outdoors.get(OutdoorParameter.RIME_DROP);
        rimeWater = outdoors.get(OutdoorParameter.RIME_WATER);
        soaked = clothing.get(ClothingParameter.SOAKED_FROM_GROUND);
    }

    /** Takes the kind of what falls from the surroundings as last seen. */
    void look() {
        falls = net.around.precipitation > 0;
        rime = net.around.supercooledCloud;
        if (falls) {
            double humidity = Math.min(
                    1.0, net.around.vapourPressure / SaturationVapour.overWater(net.around.airCelsius + KELVIN));
            snowShare = Rain.snowProbability(net.around.airCelsius, humidity);
            wetBulb = Rain.wetBulb(net.around.airCelsius, humidity);
        }
    }

    /**
     * Rain, snow and rime onto one patch, outermost cloth first; returns the heat that they take from the cloth [J].
     *
     * @param p        patch
     * @param duration length of the interval [s]
     * @param y        state at its start [degC]
     */
    double fall(int p, double duration, double[] y) {
        if (!falls && rime <= 0) {
            return 0;
        }
        PatchStack stack = net.stacks[p];
        int s = net.segmentOf[p];
        double wind = net.around.windAt[s];
        double surface =
                net.outerCelsius[net.face[p]] + net.surfaceShare[p] * (y[net.face[p]] - net.outerCelsius[net.face[p]]);
        LayerWater outermost = stack.water()[stack.layers() - 1];
        double growth = stack.areaGrowth() * catching * net.apart[s];
        double rain = 0;
        double frozen = 0;
        double finish = 0;
        if (falls) {
            double rate = net.around.precipitation;
            double liquidDriving = Precipitation.driving((1 - snowShare) * rate, 0.0, wetBulb, wind);
            double solidDriving = Precipitation.driving(snowShare * rate, 1.0, wetBulb, wind);
            rain = growth
                    * Precipitation.caught(net.posture, Network.SEGMENTS[s], (1 - snowShare) * rate, liquidDriving);
            frozen = growth
                    * Precipitation.caught(net.posture, Network.SEGMENTS[s], snowShare * rate, solidDriving)
                    * Precipitation.sticking(wetBulb, wind, surface, drySnowSticks);
            // the finish of the middle of the interval stands for all of it
            double tired = duration * FaceWetting.tiring((1 - snowShare) * rate);
            finish = FaceWetting.repelled(outermost.repels(), net.rained[p] + 0.5 * tired, finishHalfTime);
            net.rained[p] += tired;
        }
        if (rime > 0) {
            double efficiency = Rime.efficiency(
                    wind, stack.outerDiameter(), rimeDrop, net.around.airCelsius + KELVIN, net.around.pressure);
            frozen += growth
                    * Precipitation.sideOn(net.posture, Network.SEGMENTS[s])
                    * Rime.flux(rime, rimeWater, wind, efficiency);
        }
        double area = stack.area();
        int top = net.chains[p].elements - 1;
        double inside = 0;
        if (frozen > 0) {
            // what the outermost cloth cannot hold falls off
            double room = Math.max(0.0, ICE_HOLD * area - net.water.ice[net.node(p, top)]);
            double m = Math.min(room, frozen * area * duration);
            net.water.ice[net.node(p, top)] += m;
            net.water.outsideTotal += m;
            inside += Water.FUSION * m;
        }
        double arriving = rain * duration * (1.0 - finish);
        for (int k = top; k >= 0 && arriving > 0; k--) {
            int i = net.node(p, k);
            double hold = net.chains[p].hold[k];
            double taken = hold <= 0 ? 0.0 : FaceWetting.uptake(arriving, net.water.liquid[i] / area, hold);
            double m = taken * area;
            if (m > 0) {
                double heat = WATER_HEAT * m * (y[i] - net.around.airCelsius);
                net.water.liquid[i] += m;
                net.water.outsideTotal += m;
                net.water.give(p, k, -heat / duration);
                inside += heat;
            }
            arriving -= taken;
            boolean cloth = k == top || net.chains[p].layer[k] != net.chains[p].layer[k + 1];
            if (cloth) {
                arriving *= stack.water()[net.chains[p].layer[k]].passes();
            }
        }
        return inside;
    }

    /** Half of the snow that melts under the body soaks the cloth that touches it; pads keep it off. */
    void soakSeat(int p, double duration, double[] y) {
        Ground ground = java.util.Objects.requireNonNull(net.surroundings.ground());
        // soles are taken as waterproof
        if (!ground.snow() || net.stacks[p].padResistance() > 0 || net.stacks[p].zone() == Zone.FOOT) {
            return;
        }
        double t = y[net.face[p]];
        double melting = net.stacks[p].area()
                * Network.MELT
                * 0.5
                * (t + Math.sqrt(t * t + Network.MELT_WIDTH * Network.MELT_WIDTH));
        int top = net.chains[p].elements - 1;
        int i = net.node(p, top);
        double room = Math.max(0.0, net.chains[p].hold[top] * net.stacks[p].area() - net.water.liquid[i]);
        double m = Math.min(room, soaked * melting * duration / Water.FUSION);
        net.water.liquid[i] += m;
        net.water.outsideTotal += m;
    }
}
