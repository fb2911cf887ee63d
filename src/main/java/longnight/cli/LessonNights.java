package longnight.cli;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import longnight.night.Scenario;
import longnight.scenario.ScenarioReader;
import longnight.study.Lesson;
import org.jspecify.annotations.Nullable;

/** The nights of the lessons, which travel inside the program. */
final class LessonNights {
    private static final String FOLDER = "/longnight/lessons";

    private LessonNights() {}

    /** Those of one lesson, in its order. */
    static List<Scenario> of(Lesson lesson) throws IOException {
        @Nullable URL found = LessonNights.class.getResource(FOLDER + "/wardrobe.yaml");
        if (found == null) {
            throw new IllegalStateException("the nights of the lessons are missing");
        }
        try {
            URI place = found.toURI();
            if (!"jar".equals(place.getScheme())) {
                return read(lesson, Path.of(place).resolveSibling("."));
            }
            try (FileSystem jar = FileSystems.newFileSystem(place, Map.of())) {
                return read(lesson, jar.getPath(FOLDER));
            }
        } catch (URISyntaxException fault) {
            throw new IllegalStateException(fault);
        }
    }

    private static List<Scenario> read(Lesson lesson, Path folder) {
        return lesson.nights().stream()
                .map(name -> ScenarioReader.read(folder.resolve(name + ".yaml")).scenario())
                .toList();
    }
}
