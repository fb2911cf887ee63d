package longnight.night;

import longnight.body.Body;

/**
 * Checks the books of a finished run against the state itself: heat made minus heat lost must be what the body's nodes now
 * hold, losses by part must equal losses by way, and the payers must pay the bill. Shares no code with the steps. Closure
 * proves the book-keeping and says nothing about accuracy.
 */
final class Auditor {

    private Auditor() {}

    static Ledger audit(Body body, Runner runner) {
        double[] start = runner.dusk;
        double[] end = runner.state;
        Network.Books books = runner.books;
        double time = runner.endTime;
        double core = 0;
        double shell = 0;
        double[] capacity = body.capacities();
        for (int i = 0; i < capacity.length; i++) {
            double gained = capacity[i] * (end[i] - start[i]);
            if (Body.isCoreNode(i)) {
                core += gained;
            } else {
                shell += gained;
            }
        }
        double clothing = 0;
        for (Runner.Stretch stretch : runner.stretches) {
            Network net = stretch.net();
            for (int i = Body.NODES; i < net.nodes; i++) {
                clothing += net.isCloth[i] ? net.capacity[i] * (stretch.end()[i] - stretch.start()[i]) : 0.0;
            }
            clothing += stretch.waterHeatEnd() - stretch.waterHeatStart();
        }
        double[] way = books.way.clone();
        way[Way.CLOTHING_STORE.ordinal()] = clothing;
        double byWay = 0;
        for (double w : way) {
            byWay += w;
        }
        double breath = way[Way.BREATH.ordinal()];
        double byPart = breath;
        for (double p : books.part) {
            byPart += p;
        }
        double rest = body.restHeat() * time;
        double turned = books.made + Math.abs(byWay);
        double shortfall = byWay - rest;
        double payers = (books.made - rest) - shell - core;
        return new Ledger(
                books.made,
                rest,
                way,
                books.part.clone(),
                breath,
                core,
                shell,
                clothing,
                turned,
                turned == 0 ? 0 : Math.abs(books.made - byPart - core - shell) / turned,
                turned == 0 ? 0 : Math.abs(byPart - byWay) / turned,
                turned == 0 ? 0 : Math.abs(payers - shortfall) / turned);
    }
}
