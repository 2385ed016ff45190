package stafette.musicxml;

import java.util.List;

public final class Written {
  public byte[] bytes() {
    return new byte[0];
  }

  public List<String> changes() {
    return List.of();
  }
}
