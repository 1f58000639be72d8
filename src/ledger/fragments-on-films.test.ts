import { describe, expect, it } from "vitest";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { Part } from "../record/parts.ts";
import { fragmentsOnFilms } from "./fragments-on-films.ts";

const film = (id: string, takenOn: string) => ({ id, kind: "film", revision: 1, body: { takenOn } }) as unknown as Part;
const mark = (id: string, on: string, shape = "fragment") =>
  ({ id, kind: "mark", revision: 1, body: { film: on, shape, canal: "MB1" } }) as unknown as Part;
const entry = (of: string, output: object) =>
  ({ subject: `fragmentOnFilm of ${of}`, output }) as unknown as LedgerEntry;
const parts = [
  film("film-a", "2026-01-02"),
  film("film-b", "2026-02-03"),
  mark("mark-a", "film-a"),
  mark("mark-b", "film-b"),
];

describe("pieces on films", () => {
  it("have the length of their entry and the deviation that its interval speaks for, the latest first", () => {
    // 95 % of a normal distribution lie within 1.959964 deviations: 0.2 mm gives 2.608 to 3.392.
    const intervals = { lengthMm: { low: 2.608, high: 3.392, level: 0.95 } };
    const found = fragmentsOnFilms(parts, [
      entry("mark-a", { lengthMm: 3, intervals }),
      entry("mark-b", { lengthMm: 3.1234, intervals: {} }),
    ]);
    expect(found).toEqual([
      { mark: "mark-b", takenOn: "2026-02-03", canal: "MB1", lengthMm: 3.12, sigmaMm: undefined },
      { mark: "mark-a", takenOn: "2026-01-02", canal: "MB1", lengthMm: 3, sigmaMm: 0.2 },
    ]);
  });

  it("have an error that the record takes, however sharp the clicks", () => {
    const intervals = { lengthMm: { low: 2.9999, high: 3.0001, level: 0.95 } };
    expect(fragmentsOnFilms(parts, [entry("mark-a", { lengthMm: 3, intervals })])[0]?.sigmaMm).toBe(0.01);
  });

  it("are none where nothing was measured: no mark, no scale, another mark", () => {
    expect(fragmentsOnFilms(parts, [])).toEqual([]);
    expect(fragmentsOnFilms(parts, [entry("mark-a", { refused: ["x"] })])).toEqual([]);
    const traced = [film("film-a", "2026-01-02"), mark("mark-c", "film-a", "trace")];
    expect(fragmentsOnFilms(traced, [entry("mark-c", { lengthMm: 3, intervals: {} })])).toEqual([]);
  });
});
