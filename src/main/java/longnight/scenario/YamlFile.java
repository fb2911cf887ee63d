package longnight.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A YAML 1.2 file (JSON included) as values with places. Only sections, lists and plain texts; what YAML offers beyond
 * them (anchors, tags, several documents) is refused, so that nothing can grow or act behind the reader's back.
 */
final class YamlFile {
    private static final int DEEPEST = 12;
    private static final int LONGEST = 1 << 20; // characters

    private static final Pattern NO_BLANK = Pattern.compile("(\\s*(?:- )?)([a-z][a-z-]*):([^\\s\\[{\"'].*)");

    private final TextFile file;

    private YamlFile(TextFile file) {
        this.file = file;
    }

    /** The file's one value. */
    static Value read(TextFile file) {
        return new YamlFile(file).root();
    }

    private Value root() {
        LoadSettings settings = LoadSettings.builder()
                .setUseMarks(true)
                .setCodePointLimit(LONGEST)
                .setMaxAliasesForCollections(0)
                .setAllowNonScalarKeys(true) // refused by us, with the place
                .build();
        if (file.text().length() > LONGEST) {
            throw new Place(file.path(), 1, 1).fault("the file has more than a million characters", "write less");
        }
        try {
            // Looked through first, event by event: the tree is built only of a file that cannot hurt.
            check(new Parse(settings).parseString(file.text()));
            Optional<Node> root = new Compose(settings).composeString(file.text());
            if (root.isEmpty()) {
                throw new Place(file.path(), 1, 1).fault("the file is empty", "write keys with their values");
            }
            return value(root.get());
        } catch (MarkedYamlEngineException fault) {
            throw explain(fault);
        } catch (ReaderException fault) {
            int index = file.text().offsetByCodePoints(0, fault.getPosition());
            throw file.place(index).fault("a character that cannot be printed", "write plain text");
        } catch (YamlEngineException fault) {
            throw new Place(file.path(), 1, 1).fault("this is no YAML: " + fault.getMessage(), "write plain YAML");
        }
    }

    private void check(Iterable<Event> events) {
        int depth = 0;
        int documents = 0;
        for (Event event : events) {
            if (event instanceof AliasEvent alias) {
                throw place(alias.getStartMark())
                        .fault(
                                "a reference (*" + alias.getAlias() + ")",
                                "references are not used here, write the values out");
            }
            if (event instanceof NodeEvent node && node.getAnchor().isPresent()) {
                throw place(node.getStartMark())
                        .fault(
                                "an anchor (&" + node.getAnchor().get() + ")",
                                "anchors are not used here, leave it out");
            }
            boolean tagged =
                    (event instanceof ScalarEvent scalar && scalar.getTag().isPresent())
                            || (event instanceof CollectionStartEvent start
                                    && start.getTag().isPresent());
            if (tagged) {
                throw place(event.getStartMark()).fault("a tag (!)", "tags are not used here, leave it out");
            }
            if (event instanceof DocumentStartEvent && ++documents > 1) {
                throw place(event.getStartMark()).fault("a second document in one file", "write one document");
            }
            if (event instanceof CollectionStartEvent && ++depth > DEEPEST) {
                throw place(event.getStartMark())
                        .fault("sections more than " + DEEPEST + " deep", "the deepest file of ours has 5 levels");
            }
            if (event instanceof CollectionEndEvent) {
                depth--;
            }
        }
    }

    private InputFault explain(MarkedYamlEngineException fault) {
        Optional<Mark> mark = fault.getProblemMark().or(fault::getContextMark);
        Place place = place(mark);
        boolean tab = mark.isPresent() && tabAt(place);
        if (tab) {
            return place.fault("a tab", "indent with blanks");
        }
        String problem = fault.getProblem().strip();
        int beganIn = fault.getContextMark().map(Mark::getLine).orElse(place.line() - 1);
        @Nullable InputFault taught = teach(problem, beganIn, place);
        if (taught != null) {
            return taught;
        }
        String began = fault.getContextMark()
                .map(context -> context.getLine() + 1)
                .filter(line -> line != place.line())
                .map(line -> ", in what began in line " + line)
                .orElse("");
        return place.fault("no YAML from here on: " + problem + began, "write \"key: value\", indented with blanks");
    }

    /** The three first mistakes in words of ours; null for any other. */
    private @Nullable InputFault teach(String problem, int beganIn, Place place) {
        List<String> lines = file.text().lines().toList();
        String began = beganIn < lines.size() ? lines.get(beganIn) : "";
        Matcher close = NO_BLANK.matcher(began);
        if (close.matches()) {
            return new Place(file.path(), beganIn + 1, close.end(2) + 1)
                    .fault("no blank after the colon", "write \"" + close.group(2) + ": " + close.group(3) + "\"");
        }
        if (problem.contains("mapping values are not allowed")) {
            return place.fault(
                    "a second colon in one line, or a line set in too far",
                    "put a text with a colon in quotes, title: \"Night: cold\"; begin the keys of one section in one column");
        }
        if (problem.contains("expected <block end>")) {
            return place.fault(
                    "a line that is set in otherwise than those before it",
                    "begin all keys of one section in the same column as the one in line " + (beganIn + 1));
        }
        return null;
    }

    private boolean tabAt(Place place) {
        List<String> lines = file.text().lines().toList();
        if (place.line() < 1 || place.line() > lines.size()) {
            return false;
        }
        String line = lines.get(place.line() - 1);
        int index = place.column() - 1;
        return index >= 0 && index < line.length() && line.charAt(index) == '\t';
    }

    private Value value(Node node) {
        Place place = place(node.getStartMark());
        if (node instanceof ScalarNode scalar) {
            return new Value.Text(place, scalar.getValue().strip(), "");
        }
        if (node instanceof SequenceNode sequence) {
            return new Value.Items(
                    place, sequence.getValue().stream().map(this::value).toList());
        }
        if (node instanceof MappingNode mapping) {
            List<Value.Entry> entries = new ArrayList<>();
            for (NodeTuple tuple : mapping.getValue()) {
                Value key = value(tuple.getKeyNode());
                if (!(key instanceof Value.Text name)) {
                    throw key.place().fault(key.shape() + " stands for a key", "a key is a word");
                }
                entries.add(new Value.Entry(name, value(tuple.getValueNode())));
            }
            return new Value.Entries(place, entries);
        }
        throw new IllegalStateException("node of type " + node.getNodeType());
    }

    private Place place(Optional<Mark> mark) {
        return mark.map(m -> new Place(file.path(), m.getLine() + 1, m.getColumn() + 1))
                .orElseGet(() -> new Place(file.path(), 1, 1));
    }
}
