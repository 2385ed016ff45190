package stafette;

/** The one door above both front ends. */
public final class Stafette {
  private Stafette() {}

  public static void main(String[] args) {
    System.out.println("ok");
  }
}
