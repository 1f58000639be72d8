import type { FilmGeometry } from "../exposure/projection.ts";
import type { JawSegment } from "../jaw-segment.ts";
import type { PlacedInstrument } from "../treatment/instrument.ts";

/** Why a film was taken. */
export type FilmKind = "diagnostic" | "angled" | "workingLength" | "masterCone" | "final" | "recall";

/** One film of the demo, before it is made. */
export interface DemoFilm {
  /** Its name in data/demo/films, without the ending. */
  readonly name: string;
  readonly case: "A" | "B" | "C";
  readonly dayFromFirstVisit: number;
  readonly kind: FilmKind;
  readonly shows: string;
  readonly geometry: FilmGeometry;
  readonly jaw: JawSegment;
  /** Instruments whose length is known, by the canal they stand in. */
  readonly instruments?: Readonly<Record<string, PlacedInstrument>>;
  /** Radius of the lesion; 0 where there is none. */
  readonly lesionRadiusMm: number;
  readonly seed: number;
}

/** Voxels of the demo's films. */
export const demoVoxelMm = { x: 0.08, y: 0.16, z: 0.08 } as const;

/** The canal of the treated tooth with this name. */
export function canalNamed(jaw: JawSegment, name: string): JawSegment["teeth"][number]["tooth"]["canals"][number] {
  const found = jaw.teeth[0]?.tooth.canals.find((canal) => canal.name === name);
  if (found === undefined) throw new Error(`no canal ${name} in the treated tooth`);
  return found;
}

/** The treated tooth of a segment. */
export function treatedTooth(jaw: JawSegment): JawSegment["teeth"][number]["tooth"] {
  const first = jaw.teeth[0];
  if (first === undefined) throw new Error("a segment without a tooth");
  return first.tooth;
}
