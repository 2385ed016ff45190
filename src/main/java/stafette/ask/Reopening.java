package stafette.ask;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stafette.json.PlayersFile;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.limits.Assurance;
import stafette.limits.Capability;
import stafette.limits.Instrument;
import stafette.limits.Skill;
import stafette.limits.Technique;
import stafette.plan.Brief;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Seat;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.ToneChoice;
import stafette.time.TempoMark;

/**
 * Finds the question to which a brief is the answer, so that it can be asked otherwise.
 *
 * @param score the score that is open
 * @param brief what was asked
 * @param seats of players whose seats are known, by name
 * @param freed players who leave out for the line what the score gives them
 */
public record Reopening(OpenScore score, Brief brief, Map<String, Seat> seats, Set<String> freed) {
  public SplitRequest request() {
    Rules rules = brief.rules();
    return new SplitRequest(
        lineRequest(),
        brief.players().stream()
            .map(
                player ->
                    new PlayerWish(
                        player.name(), Optional.of(player.instrument().name()), player.isNamed()))
            .toList(),
        Optional.empty(),
        allowances(),
        rules.assurance(),
        rules.overlap(),
        rules.readySeconds(),
        rules.favour(),
        relaying(),
        SplitRequest.USUAL_SECONDS,
        rules.margin(),
        seats);
  }

  private LineRequest lineRequest() {
    Line line = brief.line();
    LineChoice choice = LineChoice.of(line.source());
    TempoMark mark = line.tempo().at(line.stroke(0).onset());
    return LineRequest.whole(score.file())
        .with(score.tremolo())
        .with(line.source().slurring())
        .with(isEachTone() ? choice.with(new ToneChoice.All()) : choice)
        .with(new TempoWish(Optional.of(mark.unit()), mark.perMinute()));
  }

  private boolean isEachTone() {
    return brief.lines().stream().map(line -> line.source().tone()).distinct().count() > 1;
  }

  private Relaying relaying() {
    int tones = (int) brief.lines().stream().distinct().count();
    List<LockWish> locks = new ArrayList<>();
    brief.rules().locks().forEach(lock -> locks.add(LockWish.of(lock, brief)));
    return new Relaying(brief.rules().hocket(), brief.lines().size() / tones, isEachTone(), locks);
  }

  private List<Allowance> allowances() {
    List<Allowance> allowances = new ArrayList<>();
    for (Player player : brief.players()) {
      boolean set = !bringsAllExpected(player);
      for (Skill skill : player.skills()) {
        if (set || !skill.technique().expected()) {
          allowances.add(new Allowance(Optional.of(player.name()), skill.technique().name(), set));
        }
      }
    }
    return allowances;
  }

  private static boolean bringsAllExpected(Player player) {
    List<Technique> brought = player.skills().stream().map(Skill::technique).toList();
    return brought.containsAll(
        player.instrument().techniques().stream().filter(Technique::expected).toList());
  }

  /** What is known of the players that the tables don't say. */
  public MeasuredPlayers measured(LimitsInForce limits) {
    Map<String, Instrument> own = new LinkedHashMap<>();
    for (Player player : brief.players()) {
      Instrument instrument = player.instrument();
      Optional<Instrument> known =
          limits
              .catalogue()
              .find(instrument.name())
              .map(each -> each.breathing(brief.rules().assurance()));
      if (!known.equals(Optional.of(instrument))) {
        own.put(
            player.name(),
            instrument.with(
                instrument.levelDecibel(),
                instrument
                    .breath()
                    .map(breath -> breath.at(brief.rules().assurance(), Assurance.DEFAULT)),
                instrument.techniques()));
      }
    }
    return new MeasuredPlayers(new PlayersFile(own, Map.of()), capabilities(), Map.of(), freed);
  }

  private Map<String, Map<String, Capability>> capabilities() {
    Map<String, Map<String, Capability>> measured = new HashMap<>();
    for (Player player : brief.players()) {
      for (Skill skill : player.skills()) {
        Technique technique = skill.technique();
        if (!technique.limit().at(brief.rules().assurance()).equals(skill.capability())) {
          measured
              .computeIfAbsent(player.name(), name -> new HashMap<>())
              .put(technique.name(), skill.capability());
        }
      }
    }
    return measured;
  }
}
