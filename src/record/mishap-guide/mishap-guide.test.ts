import { describe, expect, it } from "vitest";
import { jargonIn } from "../../core/plain-words/jargon.ts";
import { readingGrade } from "../../core/plain-words/reading-grade.ts";
import { mishapKinds } from "../parts/mishap-kinds.ts";
import { guideSources } from "./guide-sources.ts";
import { guidedStep, mishapGuide } from "./mishap-guide.ts";

const guides = mishapKinds.map((kind) => [kind, mishapGuide(kind)] as const);
const rows = guides.flatMap(([, { steps, cautions }]) => [...steps, ...cautions]);

describe("what is done and said after a mishap", () => {
  it("has each step once, by an id that the record takes", () => {
    const ids = guides.flatMap(([, { steps }]) => steps.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(guidedStep(id)?.id).toBe(id);
    expect(guidedStep("no-such-step")).toBeUndefined();
  });

  it.each(guides)("of %s begins with stopping or looking, and holds that the patient is told", (_, { steps }) => {
    expect(steps[0]?.says).toMatch(/^(Stop|Take a film|Look)/);
    expect(steps.some(({ says }) => says.startsWith("Tell the patient today"))).toBe(true);
  });

  it("names sources that are there, or common practice", () => {
    const known = ["common practice", ...guideSources.map(({ id }) => id)];
    for (const { source } of rows) expect(known).toContain(source);
    // A source that no row names is not one of these steps'.
    for (const { id } of guideSources) expect(rows.map(({ source }) => source)).toContain(id);
  });

  it("keeps the mark of a source that was recalled, and of one that was seen", () => {
    const marks = (source: string) => new Set(rows.filter((row) => row.source === source).map(({ mark }) => mark));
    expect(marks("hulsmann-hahn-2000")).toEqual(new Set(["memory"]));
    expect(marks("farook-2014")).toEqual(new Set(["seen"]));
    expect(marks("common practice")).toEqual(new Set(["common practice"]));
  });

  it("promises nothing and shows no cause", () => {
    for (const { says } of rows) expect(says).not.toMatch(/\bsafe|\bprove|\bguarantee/i);
  });

  // Grade 7 is read at an age of about 12 (Kincaid and others 1975, recalled).
  it.each(guides)("tells of %s in sentences of a grade of at most 7, each and together", (_, { tell }) => {
    const hard = [...tell, tell.join(" ")].filter((line) => (readingGrade(line) ?? Number.POSITIVE_INFINITY) > 7);
    expect(hard).toEqual([]);
    expect(jargonIn(tell.join(" "))).toEqual([]);
    expect(tell.join(" ")).not.toMatch(/\bsafe|\bprove|\bguarantee/i);
  });
});
