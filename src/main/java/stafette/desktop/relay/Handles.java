package stafette.desktop.relay;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import stafette.desktop.relay.RelayGestures.HandoffEnd;
import stafette.plan.Plan;
import stafette.time.Span;

/**
 * The few ordinary nodes over the canvas: segments and handoffs, in the order of time so that the
 * keyboard walks through them. They stay while a plan only changes its places, so that a drag goes
 * on.
 */
final class Handles extends Pane {
  private final Handholds stage;
  private final Region ghost = new Region();
  private List<SegmentNode> segments = List.of();
  private List<HandoffNode> handoffs = List.of();

  Handles(Handholds stage) {
    this.stage = stage;
    setPickOnBounds(false);
    ghost.getStyleClass().add("drag-ghost");
    ghost.setMouseTransparent(true);
    ghost.setManaged(false);
    ghost.setVisible(false);
    ghost.setId("drag-ghost");
    Rectangle clip = new Rectangle();
    clip.widthProperty().bind(widthProperty());
    clip.heightProperty().bind(heightProperty());
    setClip(clip);
  }

  void place() {
    if (stage.view().shown().asWritten()) {
      clear();
      return;
    }
    Plan plan = stage.view().shown().plan();
    int ways = plan.handoffs().size();
    if (segments.size() != plan.segments().size() || handoffs.size() != 3 * ways) {
      build(plan.segments().size(), ways);
    }
    segments.forEach(node -> node.place(stage.texts()));
    handoffs.forEach(node -> node.place(stage.texts()));
  }

  private void build(int segmentCount, int handoffCount) {
    String focused = focusedId();
    List<SegmentNode> links = new ArrayList<>();
    List<HandoffNode> ways = new ArrayList<>();
    List<Node> inOrder = new ArrayList<>();
    for (int i = 0; i < Math.max(segmentCount, handoffCount); i++) {
      if (i < segmentCount) {
        links.add(new SegmentNode(i, stage));
        inOrder.add(links.get(i));
      }
      if (i < handoffCount) {
        for (HandoffEnd end : List.of(HandoffEnd.BOTH, HandoffEnd.ENTERS, HandoffEnd.LEAVES)) {
          HandoffNode node = new HandoffNode(i, end, stage);
          ways.add(node);
          inOrder.add(node);
        }
      }
    }
    inOrder.add(ghost);
    segments = links;
    handoffs = ways;
    getChildren().setAll(inOrder);
    inOrder.stream()
        .filter(node -> !focused.isEmpty() && focused.equals(node.getId()))
        .forEach(Node::requestFocus);
  }

  private String focusedId() {
    return getChildren().stream().filter(Node::isFocused).map(Node::getId).findFirst().orElse("");
  }

  void clear() {
    segments = List.of();
    handoffs = List.of();
    getChildren().clear();
  }

  void ghost(int segment, int lane) {
    View view = stage.view();
    Span span = view.shown().pieces().segmentSpan(segment);
    double left = view.time().x(span.start());
    double half = view.lanes().half();
    ghost.resizeRelocate(
        left, view.lanes().middle(lane) - half, view.time().x(span.end()) - left, 2 * half);
    ghost.setVisible(true);
  }

  void noGhost() {
    ghost.setVisible(false);
  }

  void focusSegment(int segment) {
    if (segment < segments.size()) {
      segments.get(segment).requestFocus();
    }
  }
}
