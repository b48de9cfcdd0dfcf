package benchpace.cure.solver;

import benchpace.cure.CoolingCase;

/** Cases that reduce the model to one dimension or none, so that exact solutions apply. */
final class Limits {
    private Limits() { }

    /** Wax for a limit: conductivities, capacities, latent heat, melting range. */
    record Wax(double density, double cSolid, double cLiquid, double latent, double kSolid, double kLiquid,
            double solidus, double liquidus) { }

    /** A slab of the given depth, insulated on top, cooled from below: ten metres wide with an insulated side. */
    static CoolingCase slab(Wax w, double depth, double base, double room, double pour) {
        double radius = 5;
        double grams = 1000 * w.density * Math.PI * radius * radius * depth;
        return CoolingCase.of(2000 * radius, grams, w.density, w.cSolid, w.cLiquid, w.latent, w.solidus, w.liquidus,
                w.kSolid, w.kLiquid, room, pour, 0, base, 0, 0, 0);
    }

    /** A long cylinder: insulated ends, so its height does not matter. */
    static CoolingCase cylinder(Wax w, double radius, double side, double room, double pour) {
        double height = 2 * radius;
        double grams = 1000 * w.density * Math.PI * radius * radius * height;
        return CoolingCase.of(2000 * radius, grams, w.density, w.cSolid, w.cLiquid, w.latent, w.solidus, w.liquidus,
                w.kSolid, w.kLiquid, room, pour, side, 0, 0, 0, 0);
    }

    /** A candle with the same loss on every side and so much conductivity that it has one temperature. */
    static CoolingCase lumped(Wax w, double radius, double height, double loss, double room, double pour) {
        double grams = 1000 * w.density * Math.PI * radius * radius * height;
        return CoolingCase.of(2000 * radius, grams, w.density, w.cSolid, w.cLiquid, w.latent, w.solidus, w.liquidus,
                w.kSolid, w.kLiquid, room, pour, loss, loss, loss, 0, 0);
    }

    /** Temperatures in the middle column at one minute, from the base up. */
    static double[] axis(CoolingCase c, Resolution resolution, double minute) {
        double[][] found = new double[1][];
        CureSolver.watch(c, resolution, minute + 0.01, new CureSolver.MinuteWatcher() {
            private double next = minute;

            @Override
            public double nextMinute() {
                return next;
            }

            @Override
            public void see(double at, HeatFlow flow, double[] y) {
                FieldReading reading = new FieldReading(flow);
                found[0] = new double[flow.grid.axial];
                for (int iz = 0; iz < flow.grid.axial; iz++) {
                    found[0][iz] = reading.temperature(y, 0, iz);
                }
                next = Double.POSITIVE_INFINITY;
            }
        });
        return found[0];
    }
}
