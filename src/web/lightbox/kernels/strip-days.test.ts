import { describe, expect, it } from "vitest";
import { partId } from "../../../core/ids.ts";
import type { Film } from "./film-name.ts";
import { filmsInStrip, stripDays, tubeFrom, tubeFromInWords } from "./strip-days.ts";

const film = (id: string, takenOn: string, angle?: number, purpose: Film["body"]["purpose"] = "diagnostic"): Film => ({
  id: partId(id),
  kind: "film",
  revision: 1,
  body: {
    ...{ hash: "0".repeat(64), columns: 100, rows: 80, bitsStored: 12, takenOn, purpose },
    ...(angle === undefined ? {} : { horizontalAngleDeg: angle }),
    ...{ receptor: "unknown", uRunsTo: "unknown", caption: "" },
    technical: { sourceFormat: "png", sourceSha256: "0".repeat(64), wasColour: false, lossy: false, inverted: false },
  },
});

describe("the strip of films", () => {
  it("goes by day, within a day from straight to mesial to distal", () => {
    const films = [
      film("recall", "2027-02-01", 0, "recall"),
      film("distal", "2026-01-05", -20, "angled"),
      film("angled, no angle", "2026-01-05", undefined, "angled"),
      film("mesial 25", "2026-01-05", 25, "angled"),
      film("length", "2026-01-05", undefined, "workingLength"),
      film("mesial 10", "2026-01-05", 10, "angled"),
      film("straight", "2026-01-05", 0),
    ];
    const days = stripDays(films, "2026-01-05");
    expect(days.map(({ day }) => day)).toEqual(["day 0", "day 392"]);
    expect(days[0]?.films.map(({ id }) => id)).toEqual([
      "straight",
      "length",
      "mesial 10",
      "mesial 25",
      "distal",
      "angled, no angle",
    ]);
    expect(filmsInStrip(films)).toEqual(days.flatMap(({ films: ofDay }) => ofDay));
  });

  it("keeps films that are alike as they were taken in", () => {
    const films = ["c", "a", "b"].map((id) => film(id, "2026-01-05", 0));
    expect(filmsInStrip(films).map(({ id }) => id)).toEqual(["c", "a", "b"]);
  });

  it.each([
    [0, "straight", "straight"],
    [20, "mesial", "20° from mesial"],
    [-12.5, "distal", "12.5° from distal"],
    [undefined, "unknown", ""],
  ] as const)("says of %s that it is %s: %s", (angle, from, words) => {
    const one = film("a", "2026-01-05", angle);
    expect([tubeFrom(one), tubeFromInWords(one).replace("\u202f", "")]).toEqual([from, words]);
  });
});
