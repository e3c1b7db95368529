package io.github.holdpath.sim.scene.read;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.SchemaDefs;
import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * The scene format as JSON Schema, draft 2020-12, written from the same specs that the reader
 * checks with; an editor completes and underlines by it. It says less than the reader: bounds of
 * values with units stand in comments, and what several fields say together is not in it.
 */
public final class SceneSchema {
  private SceneSchema() {}

  /** The schema as JSON text that ends with a line feed. */
  public static String text() {
    SchemaDefs defs = new SchemaDefs();
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("$id", "urn:" + Scene.FORMAT.replace('/', ':'));
    schema.put("title", Scene.FORMAT);
    schema.putAll(defs.schema(SceneSpec.SCENE));
    schema.put("$defs", defs.all());
    StringWriter text = new StringWriter();
    try (JsonGenerator out = generator(text)) {
      write(out, schema);
    }
    return text + "\n";
  }

  private static JsonGenerator generator(StringWriter text) {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(lines);
    return JsonFactory.builder().build().createGenerator(new Context(printer), text);
  }

  /** Hands the printer to the generator. */
  private static final class Context extends ObjectWriteContext.Base {
    private final DefaultPrettyPrinter printer;

    Context(DefaultPrettyPrinter printer) {
      this.printer = printer;
    }

    @Override
    public boolean hasPrettyPrinter() {
      return true;
    }

    @Override
    public PrettyPrinter getPrettyPrinter() {
      return printer;
    }
  }

  private static void write(JsonGenerator out, Object value) {
    if (value instanceof Map<?, ?> map) {
      out.writeStartObject();
      map.forEach(
          (name, inner) -> {
            out.writeName(String.valueOf(name));
            write(out, inner);
          });
      out.writeEndObject();
    } else if (value instanceof List<?> list) {
      out.writeStartArray();
      list.forEach(inner -> write(out, inner));
      out.writeEndArray();
    } else if (value instanceof SchemaDefs.Raw raw) {
      out.writeRawValue(raw.json());
    } else if (value instanceof Boolean flag) {
      out.writeBoolean(flag);
    } else if (value instanceof Double number) {
      writeNumber(out, number);
    } else {
      out.writeString(String.valueOf(value));
    }
  }

  private static void writeNumber(JsonGenerator out, double number) {
    if (number == Math.rint(number) && Math.abs(number) < 1e15) {
      out.writeNumber((long) number);
    } else {
      out.writeNumber(number);
    }
  }
}
