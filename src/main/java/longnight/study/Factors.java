package longnight.study;

import static longnight.body.BodyParameter.*;
import static longnight.clothing.ClothingParameter.*;
import static longnight.outdoors.OutdoorParameter.*;

import java.util.List;

/**
 * What is drawn, those first that move a night most. Not drawn: constants that a file's words became numbers with (huddle, heat
 * packs, meals missed), those that no night uses, and the time of the peak of digestion, which hardly matters.
 */
final class Factors {

    /** The choice between the two laws, then constants of the body. */
    private static final List<Factor> BODY = List.of(
            new Factor(List.of()),
            Factor.of(REST_SITTING, REST_LYING, REST_ASLEEP),
            Factor.of(LEG_FLOW),
            Factor.of(SKIN_FLOOR),
            // threshold and trunk weight trade along a ridge: the open experiments are met nearly alike when both rise
            Factor.of(SHIVER_TRUNK_WEIGHT, SHIVER_ON),
            Factor.of(SHIVER_SKIN_SLOPE),
            // the rest of the published range belongs to the milder first form of the limbs' vessels, not to this shell
            Factor.within(LIMB_SHIVER_FLOW, 0.05, 0.2),
            Factor.within(LIMB_DEEP_FLOOR, 0.06, 0.16),
            Factor.of(LIMB_DEEP_DIVISOR),
            Factor.of(THIGH_LINK),
            Factor.of(VESSEL_GAIN),
            Factor.of(VESSEL_CORE_WEIGHT),
            Factor.of(SHIVER_CORE_GAIN),
            Factor.of(SHIVER_ON_PER_FAT),
            Factor.of(WARM_CORE_BAND),
            Factor.of(WARM_CORE_BRAKE),
            Factor.of(SHIVER_RATE_GAIN),
            Factor.of(NON_SHIVERING),
            Factor.of(LAW_B_SKIN_SHARE),
            Factor.of(LAW_B_GATE),
            Factor.of(LIMB_SKIN_CONSTRICTION),
            Factor.of(FAT_FLOOR),
            Factor.of(RECTAL_MUSCLE),
            Factor.of(CLOCK),
            Factor.of(SLEEP_SHIFT),
            Factor.of(SLEEP_SHIVER),
            Factor.of(SLEEP_SKIN_LOW, SLEEP_SKIN_HIGH),
            Factor.of(SLEEP_TRUNK_WEIGHT));

    private static final List<Factor> CLOTHING_AND_OUTDOORS = List.of(
            Factor.of(SHORT_STAPLE_DENSITY, CONTINUOUS_FILAMENT_DENSITY, ACTIVE_BATT_DENSITY),
            Factor.of(SHORT_STAPLE_RADIATION, CONTINUOUS_FILAMENT_RADIATION, ACTIVE_BATT_RADIATION),
            Factor.of(DOWN_CONSTRUCTION),
            Factor.of(DOWN_FILL_POWER_KEPT),
            Factor.of(DOWN_OVERFILL),
            Factor.of(DOWN_RADIATION),
            Factor.of(BATT_CONSTRUCTION),
            Factor.of(GAP_NEXT_TO_SKIN, GAP_MIDDLE, GAP_SHELL, GAP_SNUG),
            Factor.of(BENT_PUFFY, HALF_BENT_PUFFY, SUPINE_PUFFY, BENT_THIN),
            Factor.of(TURBULENCE),
            Factor.of(SKY_TEMPERATURE_OFFSET),
            Factor.of(MINIMUM_WIND),
            Factor.of(WIND_RATIO_FACTOR),
            Factor.of(OPENINGS_SHARE, OPENINGS_PERMEABILITY),
            Factor.of(SHOULDER_SHARE),
            Factor.of(SQUEEZE_PRESSURE),
            Factor.of(SOFT_SURFACE),
            Factor.of(PRESSURE_SITTING, PRESSURE_LYING),
            Factor.of(THIN_UNDER_BODY, FLEECE_UNDER_BODY),
            Factor.of(PAD_FOOTPRINT),
            Factor.of(SNOW_CONDUCTIVITY_FACTOR),
            Factor.of(GROUND_DEPRESSION_LIMIT));

    private static final List<Factor> WATER_WORK_AND_FUEL = List.of(
            Factor.of(CATCHING_AREA),
            Factor.of(FINISH_NEW, FINISH_WORN, FINISH_GONE),
            Factor.of(PASSED_BY_TIGHT_FACE, PASSED_BY_LOOSE_FACE),
            Factor.of(FINISH_HALF_TIME),
            Factor.of(WET_LOFT_LEAST_SHIFT),
            Factor.of(WET_LOFT_RANGE),
            Factor.of(WATER_CONDUCTION),
            Factor.of(CLING_LEAST),
            Factor.of(CLING_RANGE),
            Factor.of(WICKING_FACTOR),
            Factor.of(DRIP_TIME),
            Factor.of(FACE_HOLD),
            Factor.of(SOAKED_FROM_GROUND),
            Factor.of(FROST_CONDUCTION),
            Factor.of(FROST_ON_LOFT),
            Factor.of(SORPTION_TIME_THIN, SORPTION_TIME_LOFTY),
            Factor.of(WETTED_FACE_VAPOUR),
            Factor.of(COLD_MEMBRANE_VAPOUR),
            Factor.of(DRY_SNOW_STICKS),
            Factor.of(RIME_WATER, RIME_DROP),
            Factor.of(WALK_HEAT),
            Factor.of(DESCENT_HEAT),
            Factor.of(SWEAT_CORE_GAIN, SWEAT_SKIN_GAIN),
            Factor.of(SWEAT_CAP),
            Factor.of(DIGESTION_SHARE),
            Factor.of(GLYCOGEN_MUSCLE, GLYCOGEN_LIVER),
            Factor.of(CARBOHYDRATE_SHARE),
            Factor.of(CARBOHYDRATE_TURN),
            Factor.of(FOOD_SHARE),
            Factor.of(FUEL_KNEE),
            Factor.of(FUEL_FLOOR));

    /** All of them, in the order of the sequence's dimensions. */
    static final List<Factor> ALL = java.util.stream.Stream.of(BODY, CLOTHING_AND_OUTDOORS, WATER_WORK_AND_FUEL)
            .flatMap(List::stream)
            .toList();

    /** What a factor of {@link #ALL} belongs to. */
    static Driver driver(int factor) {
        if (factor < BODY.size()) {
            return Driver.BODY;
        }
        if (factor >= BODY.size() + CLOTHING_AND_OUTDOORS.size()) {
            return Driver.WATER_AND_WORK;
        }
        return ALL.get(factor).members().get(0).parameter() instanceof longnight.outdoors.OutdoorParameter
                ? Driver.OUTDOORS
                : Driver.CLOTHING;
    }

    private Factors() {}
}
