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

/** One part more to go by, outlined on the first film. */
export const hardPartOutlined = (comparison: Comparison, points: readonly ImagePoint[]): Gesture => {
  const { hardParts = [] } = comparison.body;
  const words = `Part ${hardParts.length + 1} to go by outlined`;
  return replaced(comparison, { ...comparison.body, hardParts: [...hardParts, points.map(pairOf)] }, words);
};

/** A part taken off; without any the whole film counts again. */
export function hardPartTakenOff(comparison: Comparison, index: number): Gesture {
  const { hardParts = [], ...body } = comparison.body;
  const left = hardParts.filter((_, place) => place !== index);
  const words = `Part ${index + 1} to go by taken off`;
  return replaced(comparison, left.length === 0 ? body : { ...body, hardParts: left }, words);
}

const changed = (comparison: Comparison, landmarks: readonly Landmark[], words: string): Gesture =>
  replaced(comparison, { ...comparison.body, landmarks: [...landmarks] }, words);

function replaced({ id, revision }: Comparison, body: Comparison["body"], words: string): Gesture {
  const operation: Operation = { op: "put", id, kind: "comparison", baseRevision: revision, body };
  return { words: words.slice(0, 200), operations: [operation] };
}
