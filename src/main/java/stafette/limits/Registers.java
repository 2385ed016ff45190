package stafette.limits;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How instruments sound from low to high.
 *
 * @param byInstrument by the names of instruments; those that sound alike everywhere have none
 */
public record Registers(Map<String, List<Register>> byInstrument) {
  public Registers {
    byInstrument = Map.copyOf(byInstrument);
  }

  /** The register of a sounding pitch, as a MIDI number. */
  public Optional<Register> of(Instrument instrument, int midi) {
    return byInstrument.getOrDefault(instrument.name(), List.of()).stream()
        .filter(register -> register.range().contains(midi))
        .findFirst();
  }
}
