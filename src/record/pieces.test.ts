import { describe, expect, it } from "vitest";
import type { Part } from "./parts.ts";
import { piecesOf } from "./pieces.ts";

/** A part of which nothing is read but what stands here. */
const bare = (kind: Part["kind"], id: string, body: object): Part =>
  ({ id, kind, revision: 1, body }) as unknown as Part;
const mishap = (id: string, on: string, what = "separatedInstrument") => bare("mishap", id, { on, what });
const removal = (id: string, of: string) => bare("removal", id, { mishap: of });
const idsOf = (parts: readonly Part[]) => piecesOf(parts).map((one) => [one.mishap?.id, one.removal?.id]);

describe("the pieces of instruments in a tooth", () => {
  it("are its separated instruments by day, each with its removal once that is begun", () => {
    const parts = [mishap("late", "2026-03-20"), removal("weighed", "late"), mishap("early", "2026-03-06")];
    expect(idsOf(parts)).toEqual([
      ["early", undefined],
      ["late", "weighed"],
    ]);
  });

  it("are no other mishap, unless a removal was begun for it", () => {
    expect(idsOf([mishap("ledge", "2026-03-06", "ledge")])).toEqual([]);
    expect(idsOf([mishap("ledge", "2026-03-06", "ledge"), removal("weighed", "ledge")])).toEqual([
      ["ledge", "weighed"],
    ]);
  });

  it("are not lost where the mishap was taken out, nor where two removals name it", () => {
    expect(
      idsOf([removal("alone", "gone"), mishap("one", "2026-03-06"), removal("a", "one"), removal("b", "one")]),
    ).toEqual([
      ["one", "a"],
      ["one", "b"],
      [undefined, "alone"],
    ]);
  });
});
