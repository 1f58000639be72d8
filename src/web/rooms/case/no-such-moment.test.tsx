import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { partId } from "../../../core/ids.ts";
import type { Part } from "../../../record/parts.ts";
import { newBodies } from "./new-bodies.ts";
import { isHere, NoSuchMoment } from "./no-such-moment.tsx";
import type { Moment } from "./spine/spine-moments.ts";

const day = "2026-03-01";
const shown: Moment = { id: "plan-1", title: "Plan", line: "", day, when: "day 0", shape: "done", films: [] };
const other: Part = { id: partId("film-1"), kind: "plan", revision: 1, body: newBodies.plan(day) };

describe("an address that names no moment of the case", () => {
  it.each([
    ["", true],
    ["plan-1", true],
    ["due", true],
    ["film-1", true],
    ["plan-9", false],
  ])("%j is here: %s", (named, here) => {
    expect(isHere(named, shown, [other])).toBe(here);
  });

  it.each([
    [false, "The moment at this address is not in the case; shown is the latest, Plan of 1 Mar 2026."],
    [true, "The moment at this address was not in the case then; shown is the latest, Plan of 1 Mar 2026."],
  ])("says what is shown in its place, as it stood: %s", (stood, words) => {
    const markup = renderToStaticMarkup(<NoSuchMoment shown={shown} stood={stood} />);
    expect(markup.replaceAll(/<[^>]*>/g, "")).toBe(words);
  });
});
