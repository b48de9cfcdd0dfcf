package benchpace.prep.supply;

/** One line of the packing list. {@link #key} stays the same as long as the plan does, for who ticks it off. */
public sealed interface Packed {
    String key();

    /** What comes home again. */
    boolean reusable();

    record OfSupply(SupplyLine line) implements Packed {
        @Override public String key() {
            return "supply:" + line.supply().id();
        }

        @Override public boolean reusable() {
            return line.supply().reusable();
        }
    }

    record OfWax(String wax, String name, double grams) implements Packed {
        @Override public String key() {
            return "wax:" + wax;
        }

        @Override public boolean reusable() {
            return false;
        }
    }

    record OfFragrance(double grams) implements Packed {
        @Override public String key() {
            return Supplies.FRAGRANCE;
        }

        @Override public boolean reusable() {
            return false;
        }
    }

    /** A melter, or another thing that is plugged in. */
    record OfAppliance(String id, String name) implements Packed {
        @Override public String key() {
            return "appliance:" + id;
        }

        @Override public boolean reusable() {
            return true;
        }
    }
}
