package io.github.holdpath.sim.scene.json;

import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.json.JsonNode.Member;
import io.github.holdpath.sim.scene.json.JsonNode.Place;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;

/**
 * JSON text to nodes with places. The parser's own limits (depth 500, numbers of 1000 characters)
 * stay on; a syntax error is the only fault of its text.
 */
public final class JsonTree {
  private final String source;
  private final JsonParser parser;

  private JsonTree(String source, JsonParser parser) {
    this.source = source;
    this.parser = parser;
  }

  /**
   * Reads one JSON value.
   *
   * @param source file as the user named it, or the option that gave the text
   * @param text without byte-order mark
   * @param pointer of the value in its file, empty for a whole file
   * @throws SceneException with one fault, if the text is not JSON
   */
  public static JsonNode parse(String source, String text, String pointer) throws SceneException {
    try (JsonParser parser =
        JsonFactory.builder().build().createParser(ObjectReadContext.empty(), text)) {
      JsonTree tree = new JsonTree(source, parser);
      JsonToken first = parser.nextToken();
      if (first == null) {
        throw new SceneException(List.of(SyntaxFault.empty(source)));
      }
      JsonNode node = tree.value(first, pointer);
      TokenStreamLocation end = parser.currentLocation();
      if (parser.nextToken() != null) {
        TokenStreamLocation extra = parser.currentTokenLocation();
        throw new SceneException(List.of(SyntaxFault.more(source, extra, end)));
      }
      return node;
    } catch (JacksonException e) {
      throw new SceneException(List.of(SyntaxFault.of(source, text, e)));
    }
  }

  private JsonNode value(JsonToken token, String pointer) {
    Place place = here(pointer);
    return switch (token) {
      case START_OBJECT -> object(place);
      case START_ARRAY -> list(place);
      case VALUE_STRING -> new JsonNode.Text(place, parser.getString());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new JsonNode.Num(place, parser.getString());
      case VALUE_TRUE, VALUE_FALSE, VALUE_NULL -> new JsonNode.Word(place, parser.getString());
      case NOT_AVAILABLE, END_OBJECT, END_ARRAY, PROPERTY_NAME, VALUE_EMBEDDED_OBJECT ->
          throw new IllegalStateException("a JSON value cannot begin with " + token);
    };
  }

  private JsonNode object(Place place) {
    List<Member> members = new ArrayList<>();
    for (JsonToken t = parser.nextToken(); t == JsonToken.PROPERTY_NAME; t = parser.nextToken()) {
      String name = parser.currentName();
      String pointer = Pointers.join(place.pointer(), name);
      Place key = here(pointer);
      members.add(new Member(name, key, value(parser.nextToken(), pointer)));
    }
    return new JsonNode.Obj(place, members);
  }

  private JsonNode list(Place place) {
    List<JsonNode> items = new ArrayList<>();
    for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
      items.add(value(t, Pointers.join(place.pointer(), Integer.toString(items.size()))));
    }
    return new JsonNode.Items(place, items);
  }

  private Place here(String pointer) {
    TokenStreamLocation at = parser.currentTokenLocation();
    return new Place(source, at.getLineNr(), at.getColumnNr(), pointer);
  }
}
