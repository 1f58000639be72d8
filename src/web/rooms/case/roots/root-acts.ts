import {
  addLevel,
  countHere,
  joinHere,
  nextShape,
  shapeHere,
  splitHere,
  takeLevel,
} from "../../../../record/roots/level-steps.ts";
import type { RootStep, RootsInHand } from "../../../../record/roots/root-step.ts";
import { addRoot, nextSide, putOnSide, takeRoot } from "../../../../record/roots/root-steps.ts";
import { countOf } from "../../../parts/figures-in-words.ts";

/** One thing that can be done with a key or a button at the chosen level or root. */
export interface RootAct {
  readonly keys: string;
  /** On its button. */
  readonly label: string;
  /** On the sheet of keys. */
  readonly does: string;
  /** What it acts on: buttons of one kind stand together. */
  readonly on: "level" | "root";
  readonly step: (hand: RootsInHand) => RootStep;
}

/** What the sides of a root are called in this tooth. */
export const sideName = ({ tooth }: RootsInHand, side: "buccal" | "lingual" | undefined): string =>
  side === undefined ? "in line" : side === "lingual" && tooth.arch === "upper" ? "palatal" : side;

const act = (on: RootAct["on"], keys: string, label: string, [does, step]: [string, RootAct["step"]]): RootAct => ({
  ...{ on, keys, label, does, step },
});

/** What the editor can do, in the order of its buttons. */
export const rootActs: readonly RootAct[] = [
  act("level", "s", "Split", ["A canal more at the chosen level", splitHere]),
  act("level", "j", "Join", ["A canal fewer at the chosen level", joinHere]),
  act("level", "c", "C-shape", [
    "The next form of a C-shaped section, C1 to C5, then none",
    (hand) => shapeHere(hand, nextShape(hand)),
  ]),
  act("level", "l", "Add a level", ["A level behind the chosen one", addLevel]),
  act("level", "Delete", "Take the level away", ["The chosen level away", takeLevel]),
  act("root", "r", "Add a root", ["The next root of this tooth", addRoot]),
  act("root", "b", "Other side", [
    "The root buccal, lingual, in line",
    (hand) => putOnSide(hand, nextSide(hand), sideName(hand, nextSide(hand))),
  ]),
  act("root", "Shift+Delete", "Take the root away", ["The chosen root away", takeRoot]),
];

/** So many canals at the chosen level, by their number. */
export const countActs: readonly RootAct[] = [1, 2, 3, 4, 5, 6].map((count) =>
  act("level", String(count), String(count), [
    `${countOf(count, "canal")} at the chosen level`,
    (hand) => countHere(hand, count),
  ]),
);
