import { describe, expect, it } from "vitest";
import { part, sampleParts } from "../../test/sample-case.ts";
import { type BodyOf, type Part, partTypes } from "./parts.ts";
import { partsOn } from "./parts-on.ts";

/** A part of which nothing but its days is read. */
const dated = (kind: Part["kind"], id: string, body: object): Part =>
  ({ id, kind, revision: 1, body }) as unknown as Part;
const film = (id: string, takenOn: string) => dated("film", id, { takenOn });
const idsOn = (parts: readonly Part[], day: string) => partsOn(parts, day).map(({ id }) => id);

describe("the parts that stood on a day", () => {
  it.each([
    ["medicalHistory", "takenOn"],
    ["findings", "takenOn"],
    ["diagnosis", "madeOn"],
    ["plan", "madeOn"],
    ["consent", "on"],
    ["film", "takenOn"],
    ["visit", "on"],
    ["mishap", "on"],
    ["handback", "on"],
    ["recall", "on"],
    ["review", "on"],
  ] as const)("a %s stands from its own day on", (kind, field) => {
    const one = dated(kind, "one", { [field]: "2024-03-06" });
    expect(idsOn([one], "2024-03-05")).toEqual([]);
    expect(idsOn([one], "2024-03-06")).toEqual(["one"]);
    expect(idsOn([one], "2030-01-01")).toEqual(["one"]);
  });

  it("what has no day stands always, and so does the case, though it may name a later one", () => {
    const undated = (["anatomy", "reference", "claim"] as const).map((kind) => dated(kind, kind, {}));
    const about = dated("case", "about", { presentedOn: "2024-03-06" });
    expect(idsOn([about, ...undated], "2000-01-01")).toEqual(["about", "anatomy", "reference", "claim"]);
  });

  it("a mark stands from the day of its film, a pairing and a comparison from that of the later one", () => {
    const parts = [
      ...[film("late", "2024-03-20"), film("early", "2024-03-06")],
      ...[dated("mark", "on-late", { film: "late" }), dated("mark", "on-early", { film: "early" })],
      dated("pairing", "pair", { films: ["early", "late"] }),
      dated("comparison", "dates", { before: "early", after: "late" }),
    ];
    expect(idsOn(parts, "2024-03-05")).toEqual([]);
    expect(idsOn(parts, "2024-03-06")).toEqual(["early", "on-early"]);
    expect(idsOn(parts, "2024-03-20")).toEqual(["late", "early", "on-late", "on-early", "pair", "dates"]);
  });

  it("a search stands with its looks up to then, and not before the first of them", () => {
    const look = (on: string) => ({ on, kind: "straightFilm", result: "notSeen", note: "" }) as const;
    const search = (...looks: BodyOf<"search">["looks"]) => part("search", "s-1", { feature: "thirdRoot", looks });
    const looks = [look("2024-03-20"), look("2024-03-06")];
    const both = part("search", "s-1", { feature: "thirdRoot", looks, foundAs: "DL" });
    expect(partsOn([both], "2024-03-05")).toEqual([]);
    expect(partsOn([both], "2024-03-06")).toEqual([search(look("2024-03-06"))]);
    expect(partsOn([both], "2024-03-20")).toEqual([both]);
    expect(partsOn([search()], "2024-03-05")).toEqual([search()]);
  });

  it("grows from day to day and never changes what stood, whatever the order of the parts", () => {
    const parts = sampleParts();
    const days = ["2024-03-03", "2024-03-04", "2024-03-06", "2024-03-20", "2024-09-20", "2030-01-01"];
    const standing = days.map((day) => new Set(idsOn(parts, day)));
    standing.slice(1).forEach((later, at) => {
      for (const id of standing[at] ?? []) expect(later).toContain(id);
    });
    expect(standing[0]?.size).toBeLessThan(parts.length);
    expect(partsOn(parts, "2030-01-01")).toEqual(parts);
    for (const day of days) expect(new Set(idsOn([...parts].reverse(), day))).toEqual(new Set(idsOn(parts, day)));
  });

  it("knows of every kind of part whether it has a day", () => {
    const asked = ["medicalHistory", "findings", "diagnosis", "plan", "consent", "film", "visit", "mishap"];
    const more = ["handback", "recall", "review", "anatomy", "reference", "claim", "case", "mark", "pairing"];
    expect(Object.keys(partTypes).sort()).toEqual([...asked, ...more, "comparison", "search", "removal"].sort());
  });
});
