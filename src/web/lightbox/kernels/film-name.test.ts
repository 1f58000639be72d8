import { describe, expect, it } from "vitest";
import { partId } from "../../../core/ids.ts";
import { dayName, daysFrom, type Film, filmName, filmsByDay } from "./film-name.ts";

const film = (id: string, takenOn: string, purpose: Film["body"]["purpose"]): Film => ({
  id: partId(id),
  kind: "film",
  revision: 1,
  body: {
    ...{ hash: "0".repeat(64), columns: 10, rows: 10, bitsStored: 8, takenOn, purpose, caption: "" },
    ...{ receptor: "unknown", uRunsTo: "unknown" },
    technical: { sourceFormat: "png", sourceSha256: "0".repeat(64), wasColour: false, lossy: false, inverted: false },
  },
});

describe("the name of a film", () => {
  it("counts days from the case's first, over a leap day and the change of the clock", () => {
    expect(daysFrom("2024-02-28", "2024-03-01")).toBe(2);
    expect(daysFrom("2026-03-28", "2026-03-30")).toBe(2);
    expect(dayName("2026-03-28", "2026-03-27")).toBe("day -1");
  });

  it("says what the film was taken for where it is not the diagnostic one", () => {
    expect(filmName(film("a", "2026-01-01", "diagnostic"), "2026-01-01")).toBe("the film of day 0");
    expect(filmName(film("a", "2026-01-14", "final"), "2026-01-01")).toBe("the final film of day 13");
  });

  it("puts films by day and leaves those of one day as they came", () => {
    const films = [
      film("c", "2026-02-01", "recall"),
      film("b", "2026-01-01", "angled"),
      film("a", "2026-01-01", "other"),
    ];
    expect(filmsByDay(films).map(({ id }) => id)).toEqual(["b", "a", "c"]);
  });
});
