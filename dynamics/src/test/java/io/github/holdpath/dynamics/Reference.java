package io.github.holdpath.dynamics;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads the files of outside numbers; their README tells where they come from. */
public final class Reference {
  private Reference() {}

  /** The entries of the array {@code field} in the file {@code name}. */
  public static Stream<JsonNode> rows(String name, String field) {
    try (InputStream in = Reference.class.getResourceAsStream("/reference/" + name)) {
      JsonNode root = JsonMapper.shared().readTree(Objects.requireNonNull(in, name));
      return root.get(field).valueStream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** An array of numbers. */
  public static double[] numbers(JsonNode array) {
    return array.valueStream().mapToDouble(JsonNode::doubleValue).toArray();
  }

  /** An array of three numbers. */
  public static Vec3 vector(JsonNode array) {
    double[] v = numbers(array);
    return new Vec3(v[0], v[1], v[2]);
  }
}
