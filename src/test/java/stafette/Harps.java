package stafette;

import java.util.List;
import java.util.Optional;
import stafette.limits.Assurance;
import stafette.limits.Instrument;
import stafette.limits.Skill;
import stafette.plan.Player;
import stafette.tables.LimitTables;

/** Harpists with all techniques of the tables. */
public final class Harps {
  /** The numbers of the two ways in which a harp takes a stretch. */
  public static final int SINGLE = 0;

  public static final int TWINS = 1;

  private Harps() {}

  public static Player player(String name, Optional<String> part) {
    Instrument harp = LimitTables.builtIn().catalogue().find("harp").orElseThrow();
    List<Skill> skills =
        harp.techniques().stream()
            .map(technique -> new Skill(technique, technique.limit().at(Assurance.DEFAULT)))
            .toList();
    return new Player(name, harp, part, skills, List.of());
  }
}
