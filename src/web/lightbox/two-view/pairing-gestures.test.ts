import { describe, expect, it } from "vitest";
import { gestureSchema } from "../../../record/change.ts";
import { type BodyOf, partTypes } from "../../../record/parts.ts";
import { filmPoint } from "../kernels/film-point.ts";
import { film, part, spot, trace } from "./case-for-tests.ts";
import {
  filmsChosen,
  levelMoved,
  levelsFreed,
  pairingSaid,
  pairingTakenBack,
  receptorSaid,
  spotShared,
  spotTakenOff,
  traceTurned,
} from "./pairing-gestures.ts";
import { sharedSpots } from "./shared-spots.ts";
import type { Pairing } from "./traced-films.ts";

const films = [film("film-1"), film("film-2", { horizontalAngleDeg: 25, purpose: "angled" })] as const;
const pairing = (change: Partial<BodyOf<"pairing">> = {}): Pairing =>
  part("pairing", "pairing-1", { canal: "DL", films: ["film-1", "film-2"], ...change }) as Pairing;
const hand = (own?: Pairing) => ({ canal: "DL", films: ["film-1", "film-2"], pairing: own, newId: "pairing-new" });
const moved = { number: 5, film: films[1], presentedOn: "2025-09-02" };

/** Every operation holds a body that the record takes. */
function accepted(gesture: { words: string; operations: readonly { op: string; kind: string; body?: unknown }[] }) {
  expect(gestureSchema.safeParse(gesture).success).toBe(true);
  for (const { op, kind, body } of gesture.operations)
    if (op === "put") expect(partTypes[kind as "pairing"].body.safeParse(body).error).toBeUndefined();
  return gesture;
}

describe("gestures about a pair of films", () => {
  it("write the films into the record with the first correction", () => {
    expect(accepted(levelMoved(hand(), [[0.5, 0.55]], moved))).toEqual({
      words: "DL: level 5 moved on the angled film of day 0",
      operations: [
        {
          ...{ op: "put", id: "pairing-new", kind: "pairing", baseRevision: 0 },
          body: { canal: "DL", films: ["film-1", "film-2"], levels: [[0.5, 0.55]] },
        },
      ],
    });
  });

  it("keep what else was said of the pair", () => {
    const own = pairing({ angleSigmaDeg: 2, levels: [[0.2, 0.2]] });
    const { operations } = accepted(levelMoved(hand(own), [[0.5, 0.55]], moved));
    expect(operations).toMatchObject([
      { id: "pairing-1", baseRevision: 1, body: { angleSigmaDeg: 2, levels: [[0.5, 0.55]] } },
    ]);
  });

  it("leave a level, or all, to the computing", () => {
    const own = pairing({ levels: [[0.2, 0.2]] });
    expect(accepted(levelsFreed(hand(own), [[0.4, 0.4]], 3)).words).toBe("DL: level 3 left to the computing");
    const all = accepted(levelsFreed(hand(own), []));
    expect(all.words).toBe("DL: all levels left to the computing");
    expect(all.operations[0]).not.toHaveProperty("body.levels");
  });

  it("choose films, whose levels begin anew, and take the choice back", () => {
    const own = pairing({ levels: [[0.2, 0.2]], sourceToToothMm: 300 });
    const third = film("film-3", { horizontalAngleDeg: -20, purpose: "other" });
    const chosen = accepted(filmsChosen(hand(own), [...films, third], "2025-09-02"));
    expect(chosen.operations[0]).toMatchObject({
      body: { films: ["film-1", "film-2", "film-3"], sourceToToothMm: 300 },
    });
    expect(chosen.operations[0]).not.toHaveProperty("body.levels");
    expect(accepted(pairingTakenBack(hand(own), own)).operations).toEqual([
      { op: "remove", id: "pairing-1", kind: "pairing", baseRevision: 1 },
    ]);
  });

  it("say a number of the pair and empty it", () => {
    const said = accepted(
      pairingSaid(hand(pairing()), "sourceToToothMm", { value: 300, words: "tube to tooth 300 mm" }),
    );
    expect(said).toMatchObject({ words: "DL: tube to tooth 300 mm", operations: [{ body: { sourceToToothMm: 300 } }] });
    const emptied = pairingSaid(hand(pairing({ angleSigmaDeg: 2 })), "angleSigmaDeg", { value: undefined, words: "x" });
    expect(accepted(emptied).operations[0]).not.toHaveProperty("body.angleSigmaDeg");
  });

  it("say of all films at once how the receptor was held", () => {
    const { words, operations } = accepted(receptorSaid(films, "fixed"));
    expect(words).toBe("Receptor left in its place, on 2 films");
    expect(operations).toMatchObject([
      { id: "film-1", kind: "film", body: { receptor: "fixed", horizontalAngleDeg: 0 } },
      { id: "film-2", kind: "film", body: { receptor: "fixed", horizontalAngleDeg: 25 } },
    ]);
  });

  it("turn a trace round", () => {
    const { words, operations } = accepted(traceTurned(trace("trace-1", "film-1"), films[0], "2025-09-02"));
    expect(words).toBe("DL turned to run to the apex on the film of day 0");
    expect(operations).toMatchObject([
      {
        id: "trace-1",
        body: {
          points: [
            [300, 500],
            [300, 400],
            [300, 300],
            [300, 200],
            [300, 100],
          ],
          anchors: [
            [300, 500],
            [300, 100],
          ],
        },
      },
    ]);
  });

  it("mark a landmark on each film, and take it off all", () => {
    const places = films.map(({ id }, at) => ({ id: `spot-${at}`, film: id, at: filmPoint(10.456, at) }));
    expect(accepted(spotShared("buccal cusp", places))).toMatchObject({
      words: "Landmark buccal cusp marked on 2 films",
      operations: [
        { body: { shape: "spot", what: "buccal cusp", film: "film-1", at: [10.46, 0] } },
        { body: { film: "film-2" } },
      ],
    });
    const marks = [spot("spot-1", "film-1", "cusp"), spot("spot-2", "film-2", "cusp")];
    const [shared] = sharedSpots(marks as never, ["film-1", "film-2"]);
    expect(shared && accepted(spotTakenOff(shared)).operations.map(({ op, ...rest }) => [op, rest])).toEqual([
      ["remove", { id: "spot-1", kind: "mark", baseRevision: 1 }],
      ["remove", { id: "spot-2", kind: "mark", baseRevision: 1 }],
    ]);
  });

  it("stay within the words that the record takes", () => {
    const long = Array.from({ length: 6 }, (_, at) => film(`film-${at}`, { purpose: "workingLength" }));
    expect(filmsChosen(hand(), long, "2025-09-02").words.length).toBeLessThanOrEqual(200);
    expect(spotShared("x".repeat(290), []).words.length).toBeLessThanOrEqual(200);
  });
});
