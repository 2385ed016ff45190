package stafette.json;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A record that is a whole document; the document begins with its format and its version. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@interface Edition {
  String format();

  int version();

  /** Whether people write it, so that members it doesn't know are their mistakes. */
  boolean byHand() default false;
}
