package stafette.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.limits.Capability;
import stafette.limits.Technique;
import stafette.plan.Brief;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Seat;
import stafette.plan.Skill;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.ToneChoice;
import stafette.time.TempoMark;

/** Finds the question to which a brief is the answer, so that it can be asked otherwise. */
final class Reopening {
  private static final double SEARCH_SECONDS = 20;

  private Reopening() {}

  static SplitLine.Request request(OpenScore score, Brief brief, Map<String, Seat> seats) {
    Rules rules = brief.rules();
    return new SplitLine.Request(
        lineRequest(score, brief),
        brief.players().stream()
            .map(player -> new PlayerWish(player.name(), Optional.of(player.instrument().name())))
            .toList(),
        Optional.empty(),
        allowances(brief),
        rules.assurance(),
        rules.overlap(),
        rules.readySeconds(),
        rules.favour(),
        relaying(brief),
        SEARCH_SECONDS,
        seats);
  }

  private static LineRequest lineRequest(OpenScore score, Brief brief) {
    Line line = brief.line();
    LineChoice choice = LineChoice.of(line.source());
    TempoMark mark = line.tempo().at(line.stroke(0).onset());
    return LineRequest.whole(score.file())
        .with(isEachTone(brief) ? choice.with(new ToneChoice.All()) : choice)
        .with(new TempoWish(Optional.of(mark.unit()), mark.perMinute()));
  }

  private static boolean isEachTone(Brief brief) {
    return brief.lines().stream().map(line -> line.source().tone()).distinct().count() > 1;
  }

  private static Relaying relaying(Brief brief) {
    int tones = (int) brief.lines().stream().distinct().count();
    List<LockWish> locks = new ArrayList<>();
    brief.rules().locks().forEach(lock -> locks.add(LockWish.of(lock, brief)));
    return new Relaying(
        brief.rules().hocket(), brief.lines().size() / tones, isEachTone(brief), locks);
  }

  private static List<Allowance> allowances(Brief brief) {
    List<Allowance> allowances = new ArrayList<>();
    for (Player player : brief.players()) {
      for (Skill skill : player.skills()) {
        if (!skill.technique().expected()) {
          allowances.add(new Allowance(Optional.of(player.name()), skill.technique().name()));
        }
      }
    }
    return allowances;
  }

  /** What players are capable of that the tables don't say, by player and technique. */
  static Map<String, Map<String, Capability>> measured(Brief brief) {
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
