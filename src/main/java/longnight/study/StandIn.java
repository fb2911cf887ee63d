package longnight.study;

import java.util.List;
import longnight.clothing.Garment;
import longnight.clothing.Garment.ZoneLayer;
import longnight.clothing.GarmentKind;
import longnight.clothing.GarmentSpec;

/** A made-up piece that is known by its layers alone; no label says anything of it. */
final class StandIn {
    private StandIn() {}

    static Garment of(String id, GarmentKind kind, List<ZoneLayer> layers) {
        GarmentSpec spec = new GarmentSpec(
                id,
                id,
                kind,
                1,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                GarmentSpec.Finish.NEW,
                null,
                null);
        return new Garment(spec, List.copyOf(layers));
    }
}
