import { createContext, useContext } from "react";
import type { CourseRead } from "../../../../ledger/course-in-space.ts";
import type { Gesture } from "../../../../record/change.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { Mark } from "../../../lightbox/kernels/mark-shape.ts";
import type { MovedLevel } from "../../../lightbox/two-view/level-rows.ts";
import type { LevelTick, MeasuredLine } from "../../../lightbox/two-view/level-ticks.ts";
import type { PairingInHand } from "../../../lightbox/two-view/pairing-gestures.ts";
import type { SharedSpot } from "../../../lightbox/two-view/shared-spots.ts";
import type { TracedFilm } from "../../../lightbox/two-view/traced-films.ts";

/** A film of the course with its trace as a line that is measured along. */
export interface FilmInWork extends TracedFilm {
  readonly line: MeasuredLine;
  readonly marks: readonly Mark[];
  /** In words, as the drawings name it: `straight`, `25° from mesial`. */
  readonly name: string;
}

/** A landmark that is being marked: the films that have it so far. */
export interface NewLandmark {
  readonly places: Readonly<Record<string, readonly [number, number]>>;
}

/** Everything about one canal that the parts of the room work on. */
export interface TwoViewWork {
  readonly caseId: string;
  readonly tooth: string;
  readonly presentedOn: string;
  readonly canal: string;
  readonly films: readonly FilmInWork[];
  readonly entry: LedgerEntry | undefined;
  readonly ledger: readonly LedgerEntry[];
  readonly course: CourseRead | undefined;
  readonly ticks: readonly LevelTick[];
  readonly spots: readonly SharedSpot[];
  readonly hand: PairingInHand;
  /** A gesture is on its way; its numbers are not there yet. */
  readonly measuring: boolean;
  readonly record: (gesture: Gesture) => void;
  /** A place on the course that is pointed at, as a share of its way in space. */
  readonly place: number | undefined;
  readonly setPlace: (place: number | undefined) => void;
  /** The level that is looked at or in the hand. */
  readonly level: number | undefined;
  readonly setLevel: (number: number | undefined) => void;
  /** Moves a level in the hand; it is recorded now, or when the hand has rested. */
  readonly moveLevel: (moved: MovedLevel, when: "now" | "later") => void;
  /** Records what is in the hand. */
  readonly finishLevel: () => void;
  /** Puts what is in the hand back. */
  readonly dropLevel: () => void;
  readonly landmark: NewLandmark | undefined;
  readonly setLandmark: (landmark: NewLandmark | undefined) => void;
}

/** See {@link TwoViewWork}. */
export const TwoViewContext = createContext<TwoViewWork | undefined>(undefined);

/** The canal that the room works on. */
export function useTwoView(): TwoViewWork {
  const work = useContext(TwoViewContext);
  if (work === undefined) throw new Error("a part of the two-view room stands outside of it");
  return work;
}
