import type { ImagePoint } from "../../../core/units.ts";
import type { Gesture, Operation } from "../../../record/change.ts";
import type { BodyOf } from "../../../record/parts.ts";
import { type Film, filmName } from "../kernels/film-name.ts";
import { pairOf } from "../kernels/film-point.ts";
import type { LevelRows } from "./level-rows.ts";
import type { SharedSpot } from "./shared-spots.ts";
import type { Pairing, Trace } from "./traced-films.ts";

/** What a pairing is of: the canal, the films in the order of their views, the choice as it stands, an id for a new one. */
export interface PairingInHand {
  readonly canal: string;
  readonly films: readonly string[];
  readonly pairing: Pairing | undefined;
  readonly newId: string;
}

type PairingBody = BodyOf<"pairing">;

function put({ canal, films, pairing, newId }: PairingInHand, change: Partial<PairingBody>): Operation {
  const body = { canal, films: [...films], ...pairing?.body, ...change };
  const kept = Object.fromEntries(Object.entries(body).filter(([, value]) => value !== undefined));
  return { op: "put", id: pairing?.id ?? newId, kind: "pairing", baseRevision: pairing?.revision ?? 0, body: kept };
}

const mutable = (rows: LevelRows): number[][] => rows.map((row) => [...row]);

/** A level moved on one film. */
export const levelMoved = (
  hand: PairingInHand,
  rows: LevelRows,
  { number, film, presentedOn }: { readonly number: number; readonly film: Film; readonly presentedOn: string },
): Gesture => ({
  words: `${hand.canal}: level ${number} moved on ${filmName(film, presentedOn)}`,
  operations: [put(hand, { levels: mutable(rows) })],
});

/** A level, or all of them, left to the computing again. */
export const levelsFreed = (hand: PairingInHand, rows: LevelRows, number?: number): Gesture => ({
  words: `${hand.canal}: ${number === undefined ? "all levels" : `level ${number}`} left to the computing`,
  operations: [put(hand, { levels: rows.length === 0 ? undefined : mutable(rows) })],
});

/** Other films for the canal; levels that were fixed hold for the films before and are left out. */
export const filmsChosen = (hand: PairingInHand, films: readonly Film[], presentedOn: string): Gesture => ({
  words: within200(`${hand.canal} read from ${films.map((film) => filmName(film, presentedOn)).join(" and ")}`),
  operations: [put(hand, { films: films.map(({ id }) => id), levels: undefined })],
});

/** The choice of films taken back: the ledger takes them by itself again. */
export const pairingTakenBack = ({ canal }: PairingInHand, pairing: Pairing): Gesture => ({
  words: `${canal}: films and levels left to the computing`,
  operations: [{ op: "remove", id: pairing.id, kind: "pairing", baseRevision: pairing.revision }],
});

/** A number that belongs to the pair: the tube's distance, the error of an angle; absent to take it away. */
export const pairingSaid = (
  hand: PairingInHand,
  field: "sourceToToothMm" | "toothToDetectorMm" | "angleSigmaDeg",
  { value, words }: { readonly value: number | undefined; readonly words: string },
): Gesture => ({ words: `${hand.canal}: ${words}`, operations: [put(hand, { [field]: value })] });

type Receptor = BodyOf<"film">["receptor"];
const receptorWords: Readonly<Record<Receptor, string>> = {
  turnsWithBeam: "turned with the beam",
  fixed: "left in its place",
  unknown: "not known how it was held",
};

/** How the receptor was held, said of all films of the course at once. */
export const receptorSaid = (films: readonly Film[], receptor: Receptor): Gesture => ({
  words: `Receptor ${receptorWords[receptor]}, on ${films.length} films`,
  operations: films.map(({ id, revision, body }) => ({
    ...{ op: "put", id, kind: "film", baseRevision: revision, body: { ...body, receptor } },
  })),
});

/** A trace turned round: it ran from the apex to the orifice. */
export function traceTurned(trace: Trace, film: Film, presentedOn: string): Gesture {
  const { body } = trace;
  const turned = { ...body, points: [...body.points].reverse(), anchors: [...body.anchors].reverse() };
  return {
    words: `${body.canal ?? "Course"} turned to run to the apex on ${filmName(film, presentedOn)}`,
    operations: [{ op: "put", id: trace.id, kind: "mark", baseRevision: trace.revision, body: turned }],
  };
}

/** One thing marked on several films under one name. */
export const spotShared = (
  what: string,
  places: readonly { readonly id: string; readonly film: string; readonly at: ImagePoint }[],
): Gesture => ({
  words: within200(`Landmark ${what} marked on ${places.length} films`),
  operations: places.map(({ id, film, at }) => ({
    ...{ op: "put", id, kind: "mark", baseRevision: 0, body: { shape: "spot", film, what, at: pairOf(at) } },
  })),
});

/** A landmark taken off every film of the course. */
export const spotTakenOff = ({ what, spots }: SharedSpot): Gesture => ({
  words: within200(`Landmark ${what} taken off`),
  operations: spots.flatMap((spot) =>
    spot === undefined ? [] : [{ op: "remove" as const, id: spot.id, kind: "mark", baseRevision: spot.revision }],
  ),
});

/** Words of a gesture have at most 200 letters in the record. */
const within200 = (words: string): string => (words.length <= 200 ? words : `${words.slice(0, 199)}…`);
