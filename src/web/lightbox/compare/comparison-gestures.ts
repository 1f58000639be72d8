import type { ImagePoint } from "../../../core/units.ts";
import type { Gesture, Operation } from "../../../record/change.ts";
import { pairOf } from "../kernels/film-point.ts";
import type { Comparison, FilmPair, Landmark, Side } from "./comparison.ts";

/** A comparison begun between two films. Takes the id of the part that it will be, and what the films are called. */
export const comparisonBegun = (id: string, films: FilmPair, called: string): Gesture => ({
  words: `Comparison of ${called} begun`,
  operations: [{ op: "put", id, kind: "comparison", baseRevision: 0, body: { ...films, landmarks: [] } }],
});

/** A comparison taken away; its entries stay in the ledger. */
export const comparisonTakenAway = ({ id, revision }: Comparison, called: string): Gesture => ({
  words: `Comparison of ${called} taken away`,
  operations: [{ op: "remove", id, kind: "comparison", baseRevision: revision }],
});

/** One place more that was found on both films. */
export const landmarkAdded = (comparison: Comparison, places: Readonly<Record<Side, ImagePoint>>): Gesture => {
  const landmark: Landmark = { before: pairOf(places.before), after: pairOf(places.after) };
  return changed(
    comparison,
    [...comparison.body.landmarks, landmark],
    `Landmark ${comparison.body.landmarks.length + 1} marked on both films`,
  );
};

/** A landmark moved on one of the films; `on` says on which, in words. */
export const landmarkMoved = (
  comparison: Comparison,
  { index, side, at }: { index: number; side: Side; at: ImagePoint },
  on: string,
): Gesture =>
  changed(
    comparison,
    comparison.body.landmarks.map((one, place) => (place === index ? { ...one, [side]: pairOf(at) } : one)),
    `Landmark ${index + 1} moved on ${on}`,
  );

/** A landmark taken off both films. */
export const landmarkTakenOff = (comparison: Comparison, index: number): Gesture =>
  changed(
    comparison,
    comparison.body.landmarks.filter((_, place) => place !== index),
    `Landmark ${index + 1} taken off`,
  );

/** A landmark under another name; an empty one takes the name away. */
export function landmarkNamed(comparison: Comparison, index: number, name: string): Gesture {
  const named = ({ name: _name, ...bare }: Landmark): Landmark => (name === "" ? bare : { ...bare, name });
  const words = name === "" ? `Landmark ${index + 1}: name taken away` : `Landmark ${index + 1} named ${name}`;
  return changed(
    comparison,
    comparison.body.landmarks.map((one, place) => (place === index ? named(one) : one)),
    words,
  );
}

function changed({ id, revision, body }: Comparison, landmarks: readonly Landmark[], words: string): Gesture {
  const operation: Operation = {
    op: "put",
    id,
    kind: "comparison",
    baseRevision: revision,
    body: { ...body, landmarks },
  };
  return { words: words.slice(0, 200), operations: [operation] };
}
