package benchpace.cure.solver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Traces the outlines of where a field on a rectangular net is below a level: marching squares (Lorensen and Cline,
 * Computer Graphics 21 (1987) 163-169, in two dimensions). Around the net lies a rim of values above every level at the
 * places of the border itself, so that every outline is closed and ends on the border.
 */
final class FrontTracer {
    private static final double OUTSIDE = 2;

    private final double[] r;
    private final double[] z;
    private final double[][] value;

    /**
     * @param r positions along the first index of value, rising
     * @param z positions along the second
     */
    FrontTracer(double[] r, double[] z, double[][] value) {
        this.r = rimmed(r);
        this.z = rimmed(z);
        this.value = new double[r.length + 2][z.length + 2];
        for (int i = 0; i < r.length + 2; i++) {
            for (int j = 0; j < z.length + 2; j++) {
                boolean rim = i == 0 || j == 0 || i == r.length + 1 || j == z.length + 1;
                this.value[i][j] = rim ? OUTSIDE : value[i - 1][j - 1];
            }
        }
    }

    private static double[] rimmed(double[] inner) {
        double[] all = new double[inner.length + 2];
        System.arraycopy(inner, 0, all, 1, inner.length);
        all[0] = inner[0];
        all[all.length - 1] = inner[inner.length - 1];
        return all;
    }

    List<List<SectionPoint>> below(double level) {
        Map<Integer, Integer> next = new HashMap<>();
        for (int i = 0; i < r.length - 1; i++) {
            for (int j = 0; j < z.length - 1; j++) {
                square(i, j, level, next);
            }
        }
        List<List<SectionPoint>> outlines = new ArrayList<>();
        while (!next.isEmpty()) {
            List<SectionPoint> outline = new ArrayList<>();
            Integer edge = next.keySet().iterator().next();
            while (edge != null && next.containsKey(edge)) {
                add(outline, point(edge, level));
                edge = next.remove(edge);
            }
            if (outline.size() > 2) {
                outlines.add(outline);
            }
        }
        return outlines;
    }

    private static void add(List<SectionPoint> outline, SectionPoint point) {
        if (outline.isEmpty() || !outline.get(outline.size() - 1).equals(point)) {
            outline.add(point);
        }
    }

    /** The directed pieces of front in one square: what is below the level lies to the left of each. */
    private void square(int i, int j, double level, Map<Integer, Integer> next) {
        boolean a = value[i][j] < level;
        boolean b = value[i + 1][j] < level;
        boolean c = value[i + 1][j + 1] < level;
        boolean d = value[i][j + 1] < level;
        int kind = (a ? 1 : 0) + (b ? 2 : 0) + (c ? 4 : 0) + (d ? 8 : 0);
        int south = edge(i, j, false);
        int north = edge(i, j + 1, false);
        int west = edge(i, j, true);
        int east = edge(i + 1, j, true);
        boolean saddleBelow = value[i][j] + value[i + 1][j] + value[i + 1][j + 1] + value[i][j + 1] < 4 * level;
        switch (kind) {
            case 1 -> next.put(south, west);
            case 2 -> next.put(east, south);
            case 3 -> next.put(east, west);
            case 4 -> next.put(north, east);
            case 6 -> next.put(north, south);
            case 7 -> next.put(north, west);
            case 8 -> next.put(west, north);
            case 9 -> next.put(south, north);
            case 11 -> next.put(east, north);
            case 12 -> next.put(west, east);
            case 13 -> next.put(south, east);
            case 14 -> next.put(west, south);
            case 5 -> {
                next.put(south, saddleBelow ? east : west);
                next.put(north, saddleBelow ? west : east);
            }
            case 10 -> {
                next.put(east, saddleBelow ? north : south);
                next.put(west, saddleBelow ? south : north);
            }
            default -> { }
        }
    }

    private int edge(int i, int j, boolean upright) {
        return 2 * (i * z.length + j) + (upright ? 1 : 0);
    }

    private SectionPoint point(int edge, double level) {
        boolean upright = edge % 2 == 1;
        int i = edge / 2 / z.length;
        int j = edge / 2 % z.length;
        int i2 = upright ? i : i + 1;
        int j2 = upright ? j + 1 : j;
        double x = (level - value[i][j]) / (value[i2][j2] - value[i][j]);
        return new SectionPoint(r[i] + x * (r[i2] - r[i]), z[j] + x * (z[j2] - z[j]));
    }
}
