package benchpace.web.screen.drawing;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A path of SVG 2 (chapter 9.3) read by a hand other than the one that writes it: all commands but arcs, which the
 * family does without.
 */
final class DrawnPath {
    private static final Pattern PART = Pattern.compile("([A-Za-z])([^A-Za-z]*)");
    private static final Pattern NUMBER = Pattern.compile("-?(?:\\d+\\.\\d+|\\.\\d+|\\d+)");

    final Path2D outline = new Path2D.Double();
    /** Every point named, handles of curves included. */
    final List<double[]> points = new ArrayList<>();
    private Point2D at = new Point2D.Double();
    private Point2D begin = at;
    private Point2D handle = at;

    DrawnPath(String path) {
        Matcher part = PART.matcher(path);
        while (part.find()) {
            List<Double> numbers = NUMBER.matcher(part.group(2)).results().map(r -> Double.valueOf(r.group())).toList();
            char command = part.group(1).charAt(0);
            follow(Character.toUpperCase(command), Character.isLowerCase(command), numbers);
        }
    }

    private void follow(char command, boolean relative, List<Double> numbers) {
        int each = switch (command) {
            case 'Z' -> 0;
            case 'H', 'V' -> 1;
            case 'M', 'L', 'T' -> 2;
            case 'Q', 'S' -> 4;
            case 'C' -> 6;
            default -> throw new IllegalArgumentException("no command of the family: " + command);
        };
        if (each == 0) {
            outline.closePath();
            at = begin;
            handle = at;
        } else if (numbers.isEmpty() || numbers.size() % each != 0) {
            throw new IllegalArgumentException(command + " with " + numbers);
        }
        for (int i = 0; each > 0 && i < numbers.size(); i += each) {
            one(command == 'M' && i > 0 ? 'L' : command, relative, numbers.subList(i, i + each));
        }
    }

    private void one(char command, boolean relative, List<Double> n) {
        double x = relative ? at.getX() : 0;
        double y = relative ? at.getY() : 0;
        List<Point2D> to = new ArrayList<>();
        if (command == 'H') {
            to.add(new Point2D.Double(x + n.get(0), at.getY()));
        } else if (command == 'V') {
            to.add(new Point2D.Double(at.getX(), y + n.get(0)));
        } else {
            for (int k = 0; k < n.size(); k += 2) {
                to.add(new Point2D.Double(x + n.get(k), y + n.get(k + 1)));
            }
        }
        Point2D mirrored = new Point2D.Double(2 * at.getX() - handle.getX(), 2 * at.getY() - handle.getY());
        if (command == 'T' || command == 'S') {
            to.add(0, mirrored);
        }
        to.forEach(p -> points.add(new double[] {p.getX(), p.getY()}));
        Point2D end = to.get(to.size() - 1);
        if (command == 'M') {
            outline.moveTo(end.getX(), end.getY());
            begin = end;
        } else if (to.size() == 1) {
            outline.lineTo(end.getX(), end.getY());
        } else if (to.size() == 2) {
            outline.quadTo(to.get(0).getX(), to.get(0).getY(), end.getX(), end.getY());
        } else {
            outline.curveTo(to.get(0).getX(), to.get(0).getY(), to.get(1).getX(), to.get(1).getY(), end.getX(),
                    end.getY());
        }
        handle = to.size() > 1 ? to.get(to.size() - 2) : end;
        at = end;
    }
}
