package dev.filial.cli.page;

import dev.filial.cli.paper.FontWidths;
import dev.filial.core.answer.PlantsBehindQuestion.Parent;
import dev.filial.core.answer.PlantsBehindQuestion.Plant;
import dev.filial.core.answer.PlantsBehindQuestion.PlantsBehind;
import dev.filial.core.answer.PlantsBehindQuestion.Role;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.elk.alg.layered.LayeredLayoutProvider;
import org.eclipse.elk.alg.layered.options.CenterEdgeLabelPlacementStrategy;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeLabelPlacement;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.util.NullElkProgressMonitor;
import org.eclipse.elk.graph.ElkBendPoint;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkLabel;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;
import org.jspecify.annotations.Nullable;

/**
 * Where each plant stands and each line runs: parents to the left of their offspring, in layers, by
 * the layered layout of ELK. Into a plant its seed parent comes above its pollen parent; the lines
 * that leave a plant in one role begin as one line.
 *
 * @param width of everything
 * @param height of everything
 * @param boxes the plants, in their own order
 * @param doubts the small circles that stand for parents nobody knows
 * @param lines the parents, in their own order
 */
record PedigreeLayout(
    double width, double height, List<Box> boxes, List<Doubt> doubts, List<Line> lines) {

  /** What drawings are lettered in. */
  static final FontWidths.Weights LETTERS = FontWidths.Weights.read();

  /** A point; x to the right, y down. */
  record Point(double x, double y) {}

  /** A plant and its place. */
  record Box(Plant plant, double x, double y, double width, double height) {}

  /** A parent nobody knows: the middle of its circle. */
  record Doubt(Point middle) {}

  /**
   * A parent's line.
   *
   * @param points where it begins, turns and ends
   * @param label what stands on it; null for nothing
   */
  record Line(Parent parent, List<Point> points, @Nullable Label label) {}

  /** Words on a line: the upper left corner of their field, and its size. */
  record Label(String text, double x, double y, double width, double height) {}

  static final double DOUBT = 22;
  static final double LABEL_SIZE = 10.5;
  static final double LABEL_HEIGHT = 14;
  private static final double LABEL_MARGIN = 6;
  private static final double PORT_GAP = 13;

  /** How large a plant's box has to be for its words. */
  @FunctionalInterface
  interface Sizes {
    double width(Plant plant);
  }

  /** Lays out the plants; boxes are as wide as {@code sizes} says and as high, or higher. */
  static PedigreeLayout of(PlantsBehind behind, Sizes sizes, double boxHeight) {
    return new Graph(behind, sizes, boxHeight).layout();
  }

  /** What stands on a parent's line: its share, where it is not certain. */
  static String label(Parent parent) {
    if (parent.isCertain()) {
      return "";
    }
    String role =
        switch (parent.role()) {
          case SEED -> "seed";
          case POLLEN -> "pollen";
          default -> "same";
        };
    return role + "? " + parent.share().toPercent(1);
  }

  private static final class Graph {
    private final PlantsBehind behind;
    private final ElkNode root = ElkGraphUtil.createGraph();
    private final Map<String, ElkNode> nodes = new LinkedHashMap<>();
    private final Map<String, ElkPort> outlets = new HashMap<>();
    private final List<ElkNode> unknown = new ArrayList<>();
    private final List<ElkEdge> edges = new ArrayList<>();

    Graph(PlantsBehind behind, Sizes sizes, double boxHeight) {
      this.behind = behind;
      root.setProperty(LayeredOptions.DIRECTION, Direction.RIGHT);
      root.setProperty(LayeredOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
      root.setProperty(LayeredOptions.RANDOM_SEED, 1);
      root.setProperty(LayeredOptions.SEPARATE_CONNECTED_COMPONENTS, false);
      root.setProperty(LayeredOptions.SPACING_NODE_NODE, 22.0);
      root.setProperty(LayeredOptions.SPACING_EDGE_NODE, 12.0);
      root.setProperty(LayeredOptions.SPACING_EDGE_EDGE, 8.0);
      root.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, 34.0);
      root.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, 14.0);
      root.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, 7.0);
      root.setProperty(
          LayeredOptions.EDGE_LABELS_CENTER_LABEL_PLACEMENT_STRATEGY,
          CenterEdgeLabelPlacementStrategy.HEAD_LAYER);
      // A third of the height that the usual placement takes where a few hundred lines cross.
      root.setProperty(
          LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.NETWORK_SIMPLEX);
      Map<String, Integer> inlets = new HashMap<>();
      behind.parents().forEach(one -> inlets.merge(one.offspring(), 1, Integer::sum));
      for (Plant plant : behind.plants()) {
        double height = Math.max(boxHeight, (inlets.getOrDefault(plant.name(), 0) + 1) * PORT_GAP);
        ElkNode node = node(sizes.width(plant), height);
        nodes.put(plant.name(), node);
      }
      Map<String, Integer> used = new HashMap<>();
      for (Parent parent : behind.parents()) {
        ElkNode offspring = required(parent.offspring());
        int nth = used.merge(parent.offspring(), 1, Integer::sum);
        double step = offspring.getHeight() / (inlets.getOrDefault(parent.offspring(), 0) + 1);
        edge(outlet(parent), port(offspring, PortSide.WEST, 0, step * nth), label(parent));
      }
    }

    private ElkNode required(String name) {
      ElkNode node = nodes.get(name);
      if (node == null) {
        throw new IllegalArgumentException("a parent of " + name + ", which is not among them");
      }
      return node;
    }

    private ElkNode node(double width, double height) {
      ElkNode node = ElkGraphUtil.createNode(root);
      node.setDimensions(width, height);
      node.setProperty(LayeredOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
      return node;
    }

    private static ElkPort port(ElkNode node, PortSide side, double x, double y) {
      ElkPort port = ElkGraphUtil.createPort(node);
      port.setProperty(LayeredOptions.PORT_SIDE, side);
      port.setLocation(x, y);
      return port;
    }

    /** Where the lines of one kind leave a plant, those of doubt apart from the certain ones. */
    private ElkPort outlet(Parent parent) {
      if (parent.parent() == null) {
        ElkNode circle = node(DOUBT, DOUBT);
        unknown.add(circle);
        return port(circle, PortSide.EAST, DOUBT, DOUBT / 2);
      }
      ElkNode node = required(parent.parent());
      int at = kind(parent);
      return outlets.computeIfAbsent(
          parent.parent() + " " + at,
          key -> port(node, PortSide.EAST, node.getWidth(), node.getHeight() * (at + 1) / KINDS));
    }

    private static final double KINDS = 8;

    private static int kind(Parent parent) {
      if (!parent.isCertain()) {
        return parent.role() == Role.SEED ? 4 : parent.role() == Role.POLLEN ? 5 : 6;
      }
      return switch (parent.role()) {
        case SEED -> 2;
        case SELFED -> 0;
        case POLLEN -> 3;
        default -> 1;
      };
    }

    private void edge(ElkPort from, ElkPort to, String label) {
      ElkEdge edge = ElkGraphUtil.createSimpleEdge(from, to);
      if (!label.isEmpty()) {
        ElkLabel words = ElkGraphUtil.createLabel(label, edge);
        words.setDimensions(
            LETTERS.regular().width(label, LABEL_SIZE) + 2 * LABEL_MARGIN, LABEL_HEIGHT);
        words.setProperty(LayeredOptions.EDGE_LABELS_PLACEMENT, EdgeLabelPlacement.CENTER);
        words.setProperty(LayeredOptions.EDGE_LABELS_INLINE, true);
      }
      edges.add(edge);
    }

    PedigreeLayout layout() {
      // Tells the library how to copy its own kinds of values; asked for by name it would do so
      // itself,
      // after a search through the class path.
      LayoutMetaDataService.initElkReflect();
      new LayeredLayoutProvider().layout(root, new NullElkProgressMonitor());
      List<Box> boxes = new ArrayList<>();
      for (Plant plant : behind.plants()) {
        ElkNode node = required(plant.name());
        boxes.add(new Box(plant, node.getX(), node.getY(), node.getWidth(), node.getHeight()));
      }
      List<Doubt> doubts = new ArrayList<>();
      for (ElkNode circle : unknown) {
        doubts.add(new Doubt(new Point(circle.getX() + DOUBT / 2, circle.getY() + DOUBT / 2)));
      }
      List<Line> lines = new ArrayList<>();
      for (int i = 0; i < edges.size(); i++) {
        lines.add(line(behind.parents().get(i), edges.get(i)));
      }
      return new PedigreeLayout(root.getWidth(), root.getHeight(), boxes, doubts, lines);
    }

    private static Line line(Parent parent, ElkEdge edge) {
      List<Point> points = new ArrayList<>();
      for (ElkEdgeSection section : edge.getSections()) {
        points.add(new Point(section.getStartX(), section.getStartY()));
        for (ElkBendPoint bend : section.getBendPoints()) {
          points.add(new Point(bend.getX(), bend.getY()));
        }
        points.add(new Point(section.getEndX(), section.getEndY()));
      }
      Label label = null;
      for (ElkLabel words : edge.getLabels()) {
        label =
            new Label(
                words.getText(), words.getX(), words.getY(), words.getWidth(), words.getHeight());
      }
      return new Line(parent, List.copyOf(points), label);
    }
  }
}
