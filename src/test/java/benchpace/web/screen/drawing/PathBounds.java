package benchpace.web.screen.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where the points of a path lie, handles of its curves included: a curve never leaves what is spanned by its points.
 * Of an arc only the end is known.
 */
final class PathBounds {
    private static final Pattern PART = Pattern.compile("([MLHVQqTtSsCcAamlhvZz])([^MLHVQqTtSsCcAamlhvZz]*)");
    private static final Pattern NUMBER = Pattern.compile("-?(?:\\d+\\.\\d+|\\.\\d+|\\d+)");

    final List<double[]> points = new ArrayList<>();
    private double x;
    private double y;
    private double startX;
    private double startY;

    PathBounds(String path) {
        Matcher part = PART.matcher(path);
        while (part.find()) {
            List<Double> numbers = NUMBER.matcher(part.group(2)).results().map(r -> Double.valueOf(r.group())).toList();
            follow(part.group(1).charAt(0), numbers);
        }
    }

    private void follow(char command, List<Double> numbers) {
        boolean relative = Character.isLowerCase(command);
        switch (Character.toUpperCase(command)) {
            case 'Z' -> to(startX, startY);
            case 'H' -> numbers.forEach(n -> to((relative ? x : 0) + n, y));
            case 'V' -> numbers.forEach(n -> to(x, (relative ? y : 0) + n));
            case 'A' -> arcs(relative, numbers);
            default -> curves(Character.toUpperCase(command), relative, numbers);
        }
    }

    private void arcs(boolean relative, List<Double> numbers) {
        for (int i = 0; i + 6 < numbers.size(); i += 7) {
            to((relative ? x : 0) + numbers.get(i + 5), (relative ? y : 0) + numbers.get(i + 6));
        }
    }

    private void curves(char command, boolean relative, List<Double> numbers) {
        int each = switch (command) {
            case 'Q', 'S' -> 4;
            case 'C' -> 6;
            default -> 2;
        };
        for (int i = 0; i + each <= numbers.size(); i += each) {
            double fromX = relative ? x : 0;
            double fromY = relative ? y : 0;
            for (int k = 0; k < each; k += 2) {
                to(fromX + numbers.get(i + k), fromY + numbers.get(i + k + 1));
            }
            if (command == 'M' && i == 0) {
                startX = x;
                startY = y;
            }
        }
    }

    private void to(double newX, double newY) {
        x = newX;
        y = newY;
        points.add(new double[] {x, y});
    }
}
