package io.github.holdpath.viewer.edit;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.viewer.state.Stage;
import java.util.Optional;

/**
 * A draft that can be shown.
 *
 * @param draft what was judged
 * @param scene as read from it
 * @param stage its coloured path and what moves along it
 * @param result of the whole study; empty while only the samples are known
 */
public record Judged(Draft draft, Scene scene, Stage stage, Optional<StudyResult> result) {}
