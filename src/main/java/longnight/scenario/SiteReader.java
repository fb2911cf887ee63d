package longnight.scenario;

import java.util.function.ToDoubleFunction;
import longnight.assumption.Guess;
import longnight.outdoors.Ground;
import longnight.outdoors.Site;
import longnight.outdoors.SiteWords;
import org.jspecify.annotations.Nullable;

/** A site from words and numbers; a number beats the word, and what the word stands for is listed. */
final class SiteReader {
    private final Section section;
    private final Findings findings;
    private final SiteWords.@Nullable Exposure place;

    private SiteReader(Section section, Findings findings) {
        this.section = section;
        this.findings = findings;
        place = section.has("place") ? SiteWords.exposure(section.word("place")).orElseThrow() : null;
    }

    /**
     * Reads a site.
     *
     * @param recordAltitude altitude of the weather's station [m]; NaN when the weather has none
     */
    static Site read(Section section, double recordAltitude, Findings findings) {
        return new SiteReader(section, findings).site(recordAltitude);
    }

    private Site site(double recordAltitude) {
        double altitude;
        if (section.has("altitude")) {
            altitude = section.quantity("altitude");
            if (Math.abs(altitude - recordAltitude) > 100 && !section.has("temperature-offset")) {
                findings.guesses.add(Guess.number(
                        "site",
                        "difference of air temperature to the record's station, "
                                + Math.round(altitude - recordAltitude) + " m higher",
                        0,
                        "K",
                        "none assumed; say otherwise with temperature-offset"));
            }
        } else if (Double.isNaN(recordAltitude)) {
            throw section.place()
                    .fault(
                            "a site without \"altitude\"",
                            "write its height above the sea, for example \"altitude: 900 m\"");
        } else {
            altitude = recordAltitude;
        }
        Ground ground = ground(section, findings);
        double groundCelsius = section.quantityOr("ground-temperature", Double.NaN);
        if (ground.snow() && groundCelsius > 0) {
            throw section.at("ground-temperature")
                    .fault(
                            "\"ground-temperature\" is \"" + section.text("ground-temperature") + "\" under snow",
                            "allowed is up to 0 °C");
        }
        return new Site(
                altitude,
                number("roughness", "roughness length", "m", SiteWords.Exposure::roughnessLength),
                number("shelter", "share of the wind let through", "1", SiteWords.Exposure::shelter),
                number("sky", "share of the sky seen", "1", SiteWords.Exposure::skyGap),
                number("horizon", "height of the horizon", "rad", SiteWords.Exposure::horizonAngle),
                number(
                        "temperature-offset",
                        "offset of the air temperature",
                        "K",
                        SiteWords.Exposure::temperatureOffset),
                ground,
                groundCelsius);
    }

    private double number(String key, String quantity, String unit, ToDoubleFunction<SiteWords.Exposure> ofWord) {
        if (section.has(key)) {
            return section.quantity(key);
        }
        if (place == null) {
            if (key.equals("temperature-offset") || key.equals("horizon")) {
                return 0;
            }
            throw section.place()
                    .fault(
                            "a site without \"" + key + "\"",
                            "write a \"place\" ("
                                    + String.join(", ", Tables.SITE.key("place").words()) + ") or \"" + key
                                    + "\" itself");
        }
        double value = ofWord.applyAsDouble(place);
        findings.guesses.add(
                Guess.number("site", quantity, value, unit, "the word " + place.word() + "; " + place.source()));
        return value;
    }

    /** What is under the person, by a word or by its numbers; the section must have the key. */
    static Ground ground(Section section, Findings findings) {
        if (section.value("ground") instanceof Value.Text) {
            SiteWords.Floor floor = SiteWords.floor(section.word("ground")).orElseThrow();
            Ground ground = floor.ground();
            String reason = "the word " + ground.name() + "; " + floor.source();
            findings.guesses.add(
                    Guess.number("ground", "thermal conductivity", ground.conductivity(), "W/(m K)", reason));
            findings.guesses.add(
                    Guess.number("ground", "heat capacity per volume", ground.heatCapacity(), "J/(m3 K)", reason));
            findings.guesses.add(Guess.number(
                    "ground", "cooling of its surface against snow's", ground.depressionShare(), "1", reason));
            return ground;
        }
        Section own = section.section("ground");
        return new Ground(
                own.text("name"),
                own.quantity("conductivity"),
                own.quantity("heat-capacity"),
                own.quantity("cooling"),
                own.yes("snow"));
    }
}
