import { type FieldBounds, leastCostTree } from "../../../core/geometry/least-cost-tree.ts";
import { Refusal } from "../../../core/refusal.ts";
import type { FilmPixels } from "../../../imaging/film-pixels.ts";
import { ridge, ridgeCost } from "../../../imaging/ridge.ts";
import type { Polarity } from "../tools/tool-step.ts";
import type { OpenedFilm } from "./pixels-messages.ts";
import type { RidgeAnswer, RidgeQuestion } from "./ridge-messages.ts";
import { type Answered, answerQuestions } from "./worker-end.ts";

/** How far a near tree reaches to each side; a pointer seldom is farther from the last anchor, and it comes first. */
const nearPx = 420;

/** Looking for lines takes about 40 bytes a pixel; a larger picture is cropped first. */
const mostPixels = 24_000_000;

let film: FilmPixels | undefined;
const costs = new Map<Polarity, Float32Array>();

answerQuestions<RidgeQuestion, RidgeAnswer>((question, tell): Answered<RidgeAnswer> => {
  const began = performance.now();
  const since = () => performance.now() - began;
  switch (question.ask) {
    case "open":
      film = filmOf(question.film, question.samples);
      costs.clear();
      return { answer: { is: "opened" } };
    case "ridge": {
      const { polarity } = question;
      costsOf(polarity, (fraction) => tell({ is: "progress", polarity, fraction }));
      return { answer: { is: "ready", polarity, milliseconds: since() } };
    }
    case "tree": {
      const tree = treeFrom(question.start, question.polarity, question.reach);
      return {
        answer: { is: "tree", tree, milliseconds: since() },
        handedOver: [tree.costTo.buffer, tree.before.buffer],
      };
    }
  }
});

function filmOf({ columns, rows, bitsStored, photometric }: OpenedFilm, samples: Uint16Array): FilmPixels {
  const technical = { sourceFormat: "png", wasColour: false, lossy: false } as const;
  return { columns, rows, bitsStored, photometric, samples, technical };
}

function costsOf(line: Polarity, onProgress: (fraction: number) => void = () => undefined): Float32Array {
  if (film === undefined) throw new Refusal("file.missing", "Cannot follow lines: no film is open");
  if (film.columns * film.rows > mostPixels)
    throw new Refusal(
      "file.tooLarge",
      "Cannot follow lines: the picture is too large; courses are straight from place to place",
    );
  const known = costs.get(line) ?? ridgeCost(ridge(film, { line, onProgress }));
  costs.set(line, known);
  return known;
}

function treeFrom(start: number, polarity: Polarity, reach: "near" | "whole") {
  const cost = costsOf(polarity);
  const { columns, rows } = film ?? { columns: 0, rows: 0 };
  const field = { cost, columns, rows };
  return leastCostTree(field, start, reach === "near" ? boundsNear(start, columns, rows) : undefined);
}

function boundsNear(start: number, columns: number, rows: number): FieldBounds {
  const [column, width] = spanNear(start % columns, columns);
  const [row, height] = spanNear(Math.floor(start / columns), rows);
  return { column, row, columns: width, rows: height };
}

function spanNear(at: number, size: number): [from: number, length: number] {
  const from = Math.max(0, at - nearPx);
  return [from, Math.min(size, at + nearPx + 1) - from];
}
