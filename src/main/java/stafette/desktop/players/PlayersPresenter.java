package stafette.desktop.players;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.check.JudgedPlan;
import stafette.desktop.state.Desk;
import stafette.desktop.state.Session;
import stafette.desktop.texts.Texts;
import stafette.limits.Instrument;
import stafette.limits.Saying;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Seat;
import stafette.score.Part;
import stafette.work.OpenLine;

/** Shows who is on the desk, and settles what is said of them. */
public final class PlayersPresenter implements PlayerGestures {
  private final Session session;
  private final PlayersView view;

  public PlayersPresenter(Session session, Texts texts) {
    this.session = session;
    this.view = new PlayersView(texts, this);
  }

  public PlayersView view() {
    return view;
  }

  /** Shows the players of the line on the desk, and offers those of its score. */
  public void show(Desk desk) {
    view.offer(
        desk.score()
            .map(checked -> checked.score().score().parts().stream().map(Part::name).toList())
            .orElse(List.of()),
        session.limits().catalogue().instruments().stream().map(Instrument::name).toList());
    view.show(desk.line().map(line -> entries(desk, line)).orElse(List.of()));
  }

  private static List<PlayerEntry> entries(Desk desk, OpenLine line) {
    return IntStream.range(0, line.brief().players().size())
        .mapToObj(number -> entry(desk, line, number))
        .toList();
  }

  private static PlayerEntry entry(Desk desk, OpenLine line, int number) {
    Player player = line.brief().players().get(number);
    Optional<Plan> plan = desk.plan().map(JudgedPlan::plan);
    boolean locked = desk.locks().stream().anyMatch(lock -> isAbout(lock, number));
    boolean freed = line.isFreed(player.name());
    return new PlayerEntry(
        player.name(),
        Optional.of(player.instrument().name()),
        player.skills(),
        line.said(player.name()),
        player.instrument().techniques().stream()
            .filter(technique -> !technique.expected())
            .map(
                technique ->
                    new PlayerEntry.Extra(technique.name(), line.isAllowed(player, technique)))
            .toList(),
        locked,
        freed || !player.busy().isEmpty(),
        !freed,
        Optional.ofNullable(line.seats().get(player.name())),
        plan.map(p -> p.segmentsOf(number).size()).orElse(0));
  }

  private static boolean isAbout(Lock lock, int player) {
    return Lock.player(lock).orElse(-1) == player;
  }

  @Override
  public void add(String name) {
    session.add(name, Optional.empty());
  }

  @Override
  public boolean isTold(String name) {
    return session
        .desk()
        .score()
        .map(checked -> checked.score().score())
        .flatMap(score -> session.limits().told(score, name))
        .isPresent();
  }

  @Override
  public void remove(String name) {
    session.remove(name);
  }

  @Override
  public void plays(String name, String instrument) {
    session.add(name, Optional.of(instrument));
  }

  @Override
  public void lock(String name, boolean kept) {
    session.byHand().lockPlayer(name, kept);
  }

  @Override
  public void countOther(String name, boolean counts) {
    session.free(name, !counts);
  }

  @Override
  public void allow(String name, String technique, boolean allowed) {
    session.rules().allow(name, technique, allowed);
  }

  @Override
  public void sit(String name, Optional<Seat> seat) {
    session.sit(name, seat);
  }

  @Override
  public void measured(
      String name, String technique, double peak, double sustained, double staminaStrokes) {
    session.measured(name, technique, new OpenLine.Measured(peak, sustained, staminaStrokes));
  }

  @Override
  public void says(String name, String technique, Optional<Saying> saying) {
    session.says(name, technique, saying);
  }

  @Override
  public void move(String name, int places) {
    session.move(name, places);
  }
}
