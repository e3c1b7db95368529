package io.github.holdpath.viewer.shot;

import com.jme3.asset.AssetManager;
import com.jme3.material.Material;
import com.jme3.material.RenderState;
import com.jme3.scene.Geometry;
import com.jme3.scene.Mesh;
import com.jme3.scene.VertexBuffer;
import io.github.holdpath.viewer.convert.ToEngine;
import io.github.holdpath.viewer.state.Item;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the engine has of each mesh that was drawn last time. A mesh that comes again is not handed
 * over again; one that does not come is let go.
 */
final class Props {
  private static final String MATERIAL = "io/github/holdpath/viewer/shot/surface.j3md";

  /** Pictures for which a mesh is kept though it is in none of them. */
  private static final int KEPT = 4;

  private final AssetManager assets;
  private final Map<Object, Prop> props = new IdentityHashMap<>();

  Props(AssetManager assets) {
    this.assets = assets;
  }

  /** The engine's form of an item; empty if there is nothing in it. */
  Optional<Geometry> of(Item item) {
    Object key = item instanceof Item.Body b ? b.mesh() : ((Item.Lines) item).lines();
    Prop prop = props.computeIfAbsent(key, k -> new Prop());
    Geometry geometry = prop.next(item);
    if (geometry.getMesh().getVertexCount() == 0) {
      return Optional.empty();
    }
    Material material = geometry.getMaterial();
    int tint = item instanceof Item.Body b ? b.tint() : Item.Body.WHITE;
    double opacity = item instanceof Item.Body b ? b.opacity() : 1;
    material.setColor("Tint", ToEngine.colour(tint, opacity));
    if (item instanceof Item.Body b && b.lit()) {
      material.setBoolean("Lit", true);
    } else {
      material.clearParam("Lit");
    }
    boolean clear = opacity < 1;
    material
        .getAdditionalRenderState()
        .setBlendMode(clear ? RenderState.BlendMode.Alpha : RenderState.BlendMode.Off);
    material.getAdditionalRenderState().setDepthWrite(!clear);
    geometry.setLocalTransform(ToEngine.transform(item.pose()));
    geometry.updateGeometricState();
    return Optional.of(geometry);
  }

  /** Lets go of what was not asked for since some calls: two scenes may be drawn in turn. */
  void dropUnused() {
    props
        .values()
        .removeIf(
            prop -> {
              prop.idle = prop.used == 0 ? prop.idle + 1 : 0;
              boolean unused = prop.idle >= KEPT;
              if (unused) {
                prop.drop();
              }
              prop.used = 0;
              return unused;
            });
  }

  /** Lets go of everything. */
  void dropAll() {
    props.values().forEach(Prop::drop);
    props.clear();
  }

  /** One mesh, and a geometry for each time it comes in one picture. */
  private final class Prop {
    private final List<Geometry> geometries = new ArrayList<>();
    private int used;
    private int idle;

    Geometry next(Item item) {
      if (used == geometries.size()) {
        Mesh mesh =
            !geometries.isEmpty()
                ? geometries.get(0).getMesh()
                : item instanceof Item.Body b
                    ? ToEngine.mesh(b.mesh())
                    : ToEngine.lines(((Item.Lines) item).lines());
        Geometry geometry = new Geometry("", mesh);
        geometry.setMaterial(new Material(assets, MATERIAL));
        geometries.add(geometry);
      }
      return geometries.get(used++);
    }

    void drop() {
      Mesh mesh = geometries.get(0).getMesh();
      for (VertexBuffer buffer : mesh.getBufferList()) {
        // Freed by the renderer at the end of the picture.
        buffer.dispose();
      }
    }
  }
}
