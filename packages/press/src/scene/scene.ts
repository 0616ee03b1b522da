import { type Figure, type LayerName, layers } from "./figure.ts";

/** A picture as data: what lies on each layer, from the ground up. */
export interface Scene {
  readonly layers: readonly { readonly name: LayerName; readonly figures: readonly Figure[] }[];
}

export const sceneOf = (figures: readonly Figure[]): Scene => ({
  layers: layers.flatMap((name) => {
    const here = figures.filter(({ layer }) => layer === name);
    return here.length > 0 ? [{ name, figures: here }] : [];
  }),
});

export const figuresOf = (scene: Scene): Figure[] => scene.layers.flatMap(({ figures }) => figures);
