package longnight.scenario;

import java.util.List;
import java.util.Optional;

/**
 * The keys of one kind of section.
 *
 * @param name what the section describes, for messages: "a garment"
 * @param keys its keys, in the order in which they are best written
 */
record Table(String name, List<Key> keys) {

    static Table of(String name, Key... keys) {
        return new Table(name, List.of(keys));
    }

    Optional<Key> find(String name) {
        return keys.stream().filter(key -> key.name().equals(name)).findFirst();
    }

    Key key(String name) {
        return find(name).orElseThrow(() -> new IllegalStateException(this.name + " knows no key " + name));
    }

    List<String> names() {
        return keys.stream().map(Key::name).toList();
    }
}
