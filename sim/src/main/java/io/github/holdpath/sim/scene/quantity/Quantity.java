package io.github.holdpath.sim.scene.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers with one unit at their end, as {@code 400 300 270 mm}.
 *
 * @param numbers as written, finite
 * @param unit as written, empty if there is none
 */
public record Quantity(List<Double> numbers, String unit) {
  /** A number as a regular expression that JSON Schema can use too. */
  public static final String NUMBER = "[+-]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][+-]?[0-9]{1,3})?";

  private static final Pattern LEADING = Pattern.compile("\\s*(" + NUMBER + ")(?=[^0-9./]|$)");
  private static final Pattern COMMA = Pattern.compile("[0-9],[0-9]");
  private static final int LONGEST = 400;

  /** Copies the list. */
  public Quantity {
    numbers = List.copyOf(numbers);
  }

  /** The text taken apart, or what is wrong with it. */
  public record Outcome(Optional<Quantity> quantity, String fault) {
    private static Outcome wrong(String fault) {
      return new Outcome(Optional.empty(), fault);
    }
  }

  /** Takes a text apart; the unit is not looked at. */
  public static Outcome parse(String text) {
    if (text.length() > LONGEST) {
      return Outcome.wrong("is far too long for a value with a unit");
    }
    List<Double> numbers = new ArrayList<>();
    Matcher m = LEADING.matcher(text);
    int at = 0;
    while (m.find(at) && m.start() == at) {
      double number = Double.parseDouble(m.group(1));
      if (!Double.isFinite(number)) {
        return Outcome.wrong("holds a number beyond all bounds, " + m.group(1));
      }
      numbers.add(number);
      at = m.end(1);
      if (at == text.length()) {
        break;
      }
    }
    String rest = text.substring(at).strip();
    if (COMMA.matcher(text).find()) {
      return Outcome.wrong("holds a comma; write decimals with a point and part values by blanks");
    }
    if (numbers.isEmpty()) {
      return Outcome.wrong(rest.isEmpty() ? "is empty" : "does not begin with a number");
    }
    if (rest.startsWith(",") || rest.startsWith(";")) {
      return Outcome.wrong("parts its values by \"" + rest.charAt(0) + "\"; use blanks");
    }
    if (!rest.startsWith("1/") && rest.matches(".*\\s[+-]?[0-9.].*")) {
      return Outcome.wrong("names a unit more than once; a list shares the unit at its end");
    }
    return new Outcome(Optional.of(new Quantity(numbers, rest)), "");
  }

  /**
   * Why a unit does not fit.
   *
   * @param dimension that is due
   * @return a clause, empty if it fits
   */
  public String unitFault(Dimension dimension) {
    if (dimension.unit(unit).isPresent()) {
      return "";
    }
    if (dimension == Dimension.ACCELERATION && unit.equals("g")) {
      return "is in g, the gram; standard gravity is written gn";
    }
    if (dimension == Dimension.PRESSURE && unit.startsWith("%")) {
      return "is a percentage, which hides the altitude; write the pressure below the atmosphere";
    }
    Optional<Dimension> other = Dimension.ofUnit(unit);
    if (other.isPresent()) {
      return "is " + other.get().words() + ", but " + dimension.words() + " is due";
    }
    return "has the unknown unit \""
        + (unit.length() > 20 ? unit.substring(0, 20) + "..." : unit)
        + "\"; "
        + NearestName.hint(plain(unit), dimension.unitNames())
        + "units here: "
        + String.join(", ", dimension.unitNames());
  }

  /** Values in SI; the unit must fit. */
  public double[] toSi(Dimension dimension) {
    Dimension.Unit u = dimension.unit(unit).orElseThrow();
    return numbers.stream().mapToDouble(u::toSi).toArray();
  }

  private static String plain(String unit) {
    return unit.replace("²", "^2").replace("³", "^3").replace("°", "deg").replace("·", "*");
  }
}
