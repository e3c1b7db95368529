package io.github.holdpath.sim.cli;

import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command on a scene takes. */
public final class SceneOptions {
  @Parameters(index = "0", paramLabel = "SCENE", description = "The scene file (JSON).")
  String file = "";

  @Option(
      names = "--set",
      paramLabel = "POINTER=VALUE",
      description =
          "Put a value in place of the file's, as often as wanted: --set grip/friction=0.3 or --set"
              + " \"route/3/speed=80 %%\".")
  List<String> set = new ArrayList<>();

  @Option(
      names = "--require",
      paramLabel = "S",
      description = "Required safety in place of the scene's, at least 1.")
  @Nullable Double require;

  /** For a command of this module or another; the parser fills it in. */
  public SceneOptions() {}

  /** Name of the scene file, as given. */
  public String file() {
    return file;
  }

  /**
   * The same options for another scene.
   *
   * @param other its file
   */
  public SceneOptions beside(String other) {
    SceneOptions options = new SceneOptions();
    options.file = other;
    options.set = List.copyOf(set);
    options.require = require;
    return options;
  }

  /**
   * What is set in place of the file's values, by place.
   *
   * @throws CallException if an option is no place and value, or sets a place twice
   */
  public Map<String, String> values() throws CallException {
    Map<String, String> values = new LinkedHashMap<>();
    for (String s : set) {
      int equals = s.indexOf('=');
      if (equals < 1) {
        throw new CallException(
            "--set " + s + ": give a place and a value, as --set grip/friction=0.3");
      }
      if (values.put(s.substring(0, equals), s.substring(equals + 1)) != null) {
        throw new CallException(
            "--set " + s + ": " + s.substring(0, equals) + " is set twice; set it once");
      }
    }
    return values;
  }

  /**
   * Reads the scene with what is set.
   *
   * @throws CallException if an option is wrong
   * @throws SceneException with all faults of the scene
   */
  public LoadedScene load() throws CallException, SceneException {
    return load(file);
  }

  /**
   * Reads another scene with what is set.
   *
   * @param name of its file
   * @throws CallException if an option is wrong
   * @throws SceneException with all faults of the scene
   */
  public LoadedScene load(String name) throws CallException, SceneException {
    Map<String, String> values = values();
    try {
      return SceneReader.read(Path.of(name), values);
    } catch (InvalidPathException e) {
      throw new CallException("\"" + name + "\" is not a file name: " + e.getReason());
    }
  }

  /** Required safety S of the option; empty where the scene's counts. */
  public OptionalDouble required() {
    return require == null ? OptionalDouble.empty() : OptionalDouble.of(require);
  }

  /**
   * Required safety S of a scene or of the option.
   *
   * @throws CallException if the option is out of range
   */
  public double requiredSafety(LoadedScene loaded) throws CallException {
    if (require == null) {
      return loaded.scene().requiredSafety();
    }
    if (!(require >= 1 && require <= 100)) {
      throw new CallException("--require " + require + ": give a number from 1 to 100, as 1.5");
    }
    return require;
  }
}
