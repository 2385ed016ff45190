package stafette.json;

import com.google.gson.annotations.SerializedName;
import java.lang.annotation.Annotation;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A member of an object, as it is declared by the record to which the object is bound.
 *
 * @param name as the document has it
 * @param type of its value, where it has one
 * @param isOptional whether it may be null or left out
 */
record Member(String name, Type type, boolean isOptional, RecordComponent component) {
  static List<Member> of(Class<?> record) {
    return Arrays.stream(record.getRecordComponents()).map(Member::of).toList();
  }

  private static Member of(RecordComponent component) {
    SerializedName other = component.getAccessor().getAnnotation(SerializedName.class);
    Type type = component.getGenericType();
    boolean optional = component.getType() == Optional.class;
    return new Member(
        other == null ? component.getName() : other.value(),
        optional ? inside(type) : type,
        optional,
        component);
  }

  /** What a list, a table or an optional holds. */
  static Type inside(Type type) {
    Type[] arguments = ((ParameterizedType) type).getActualTypeArguments();
    return arguments[arguments.length - 1];
  }

  static Class<?> raw(Type type) {
    return type instanceof ParameterizedType generic ? raw(generic.getRawType()) : (Class<?>) type;
  }

  /** Whether a file that lacks it can't be read. */
  boolean isDemanded() {
    return !isOptional && !isTold();
  }

  /** Whether it is never read back. */
  boolean isTold() {
    return is(Means.Told.class)
        || is(Means.Flat.class)
        || component.getDeclaringRecord().isAnnotationPresent(Means.Told.class);
  }

  boolean is(Class<? extends Annotation> mark) {
    return component.isAnnotationPresent(mark);
  }

  <A extends Annotation> Optional<A> get(Class<A> mark) {
    return Optional.ofNullable(component.getAnnotation(mark));
  }
}
