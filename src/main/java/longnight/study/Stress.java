package longnight.study;

import longnight.outdoors.Weather;

/** What a night presses with from outside, each with the same night without it. The steps are choices of this project, no source. */
public enum Stress {
    /** Air {@value #WARMER} K warmer all night; what fell as snow may then fall as rain. */
    COLD {
        @Override
        Weather without(Weather weather) {
            return weather.warmer(WARMER);
        }
    },
    /** No wind. */
    WIND {
        @Override
        Weather without(Weather weather) {
            return weather.inWind(0);
        }
    },
    /** No rain and no snow; cloud and humidity stay. */
    WET {
        @Override
        Weather without(Weather weather) {
            return weather.withoutPrecipitation();
        }
    },
    /** A sky wholly covered. */
    SKY {
        @Override
        Weather without(Weather weather) {
            return weather.overcast();
        }
    };

    /** How much warmer the night without its cold is [K]. */
    public static final double WARMER = 10;

    abstract Weather without(Weather weather);
}
