package benchpace.web.screen.drawing;

import benchpace.plan.Picture;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A drawing as its template makes it, with the marks it is made of: strokes as broad as they are drawn. */
final class Drawn {
    private static final TemplateEngine ENGINE = TemplateEngine.createPrecompiled(ContentType.Html);
    private static final Pattern MOVE = Pattern.compile("(translate|rotate|scale)\\(([^)]*)\\)");

    final String svg;
    final List<Mark> marks = new ArrayList<>();

    /** @param classes as the sheet knows them @param around all that it covers */
    record Mark(String classes, Rectangle2D around) { }

    private Drawn(String svg) {
        this.svg = svg;
    }

    static Drawn of(Drawing drawing) {
        StringOutput output = new StringOutput();
        ENGINE.render("drawing/picture.jte", drawing, output);
        Drawn drawn = new Drawn(output.toString());
        drawn.read(tree(drawn.svg), new AffineTransform());
        return drawn;
    }

    private static Element tree(String svg) {
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg))).getDocumentElement();
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new AssertionError(svg, e);
        }
    }

    static String template(Picture picture) {
        return picture.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void read(Element element, AffineTransform around) {
        AffineTransform here = new AffineTransform(around);
        here.concatenate(moved(element.getAttribute("transform")));
        shape(element).ifPresent(shape -> marks.add(new Mark(element.getAttribute("class"),
                bounds(here.createTransformedShape(stroked(element, shape))))));
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                read(inner, here);
            }
        }
    }

    private static Optional<Shape> shape(Element e) {
        return Optional.ofNullable(switch (e.getTagName()) {
            case "path" -> new DrawnPath(e.getAttribute("d")).outline;
            case "rect" -> new Rectangle2D.Double(number(e, "x"), number(e, "y"), number(e, "width"),
                    number(e, "height"));
            case "circle" -> new Ellipse2D.Double(number(e, "cx") - number(e, "r"), number(e, "cy") - number(e, "r"),
                    2 * number(e, "r"), 2 * number(e, "r"));
            case "ellipse" -> new Ellipse2D.Double(number(e, "cx") - number(e, "rx"),
                    number(e, "cy") - number(e, "ry"), 2 * number(e, "rx"), 2 * number(e, "ry"));
            case "svg", "g" -> null;
            default -> throw new IllegalArgumentException("no mark of the family: " + e.getTagName());
        });
    }

    private static Shape stroked(Element e, Shape shape) {
        if (!e.getAttribute("class").contains("d-")) {
            return shape;
        }
        float width = e.hasAttribute("stroke-width") ? (float) number(e, "stroke-width") : (float) Drawing.LINE;
        return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND).createStrokedShape(shape);
    }

    private static AffineTransform moved(String transform) {
        AffineTransform moved = new AffineTransform();
        for (MatchResult one : MOVE.matcher(transform).results().toList()) {
            double[] n = Arrays.stream(one.group(2).trim().split("[ ,]+"))
                    .mapToDouble(Double::parseDouble).toArray();
            switch (one.group(1)) {
                case "translate" -> moved.translate(n[0], n[1]);
                case "scale" -> moved.scale(n[0], n[0]);
                default -> moved.rotate(Math.toRadians(n[0]), n.length > 1 ? n[1] : 0, n.length > 1 ? n[2] : 0);
            }
        }
        return moved;
    }

    /** Of the curves themselves, not of their handles. */
    private static Rectangle2D bounds(Shape shape) {
        Rectangle2D bounds = null;
        double[] at = new double[6];
        for (PathIterator i = shape.getPathIterator(null, 0.05); !i.isDone(); i.next()) {
            if (i.currentSegment(at) != PathIterator.SEG_CLOSE) {
                Rectangle2D point = new Rectangle2D.Double(at[0], at[1], 0, 0);
                bounds = bounds == null ? point : bounds.createUnion(point);
            }
        }
        return bounds == null ? new Rectangle2D.Double() : bounds;
    }

    private static double number(Element e, String name) {
        return Double.parseDouble(e.getAttribute(name));
    }
}
