package stafette.json;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a member of a document means, or an object, with the unit of its numbers. The JSON Schemas
 * say it to those who read our files; the annotations in here are what else they demand, and what a
 * file that is read must keep. A member whose type is {@code Optional} may be null.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.TYPE})
@interface Means {
  String value();

  /** A number, or each in a list or table, is so much or more. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.RECORD_COMPONENT)
  @interface Least {
    double value();
  }

  /** A number, or each in a list or table, is more. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.RECORD_COMPONENT)
  @interface Above {
    double value();
  }

  /** A number is so much or less. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.RECORD_COMPONENT)
  @interface Most {
    double value();
  }

  /** A number is less. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.RECORD_COMPONENT)
  @interface Below {
    double value();
  }

  /** A list has so many items. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.RECORD_COMPONENT)
  @interface Items {
    int least();

    int most() default Integer.MAX_VALUE;
  }

  /** A text looks like this. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.RECORD_COMPONENT)
  @interface Like {
    String value();
  }

  /** A value is one of these. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.RECORD_COMPONENT)
  @interface Only {
    String[] value();
  }

  /** Where there is no value, the member is left out rather than null. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.RECORD_COMPONENT)
  @interface Missing {}

  /** Written for others and never read back: a file may have anything there, or nothing. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target({ElementType.RECORD_COMPONENT, ElementType.TYPE})
  @interface Told {}

  /** An object whose members stand among those of the object it belongs to. Never read back. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.RECORD_COMPONENT)
  @interface Flat {}
}
