import { describe, expect, it } from "vitest";
import { sampleSource } from "../../../test/sample-case.ts";
import { sampleRemovalTold, withPiece } from "../../../test/sample-removal.ts";
import { linesOfModel, valueAtPath } from "../../../test/words-of-model.ts";
import type { BodyOf } from "../../record/parts.ts";
import { deck } from "../deck.ts";
import { handout } from "../handout.ts";
import { numbersIn } from "../page-model.ts";
import { removalPages } from "./removal.ts";

const known = sampleSource();
const attempt = (minutes: number): BodyOf<"removal">["attempts"][number] => ({
  ...{ at: "2024-03-06T09:00:00Z", minutes, tool: "ultrasonicTip", tip: "fine, low", moved: "loosened", note: "" },
});
const whole: Partial<BodyOf<"removal">> = {
  stopRules: { setAt: "2024-03-06T08:00:00Z", minutes: 45, attempts: 3, wallLeftMm: 0.5 },
  attempts: [attempt(12), attempt(9.5)],
  result: { is: "bypassed", on: "2024-03-06", because: "the wall grew thin" },
};
const pages = (over: Partial<BodyOf<"removal">> = whole, told = sampleRemovalTold()) =>
  removalPages(withPiece(known, over, told));
const words = (...given: Parameters<typeof pages>) => linesOfModel({ pages: pages(...given) }).join("\n");

describe("the pages of a removal", () => {
  it("show the ways, say that the figures do not decide, and give the case's groups as n/N", () => {
    const said = words();
    expect(said).toContain("The figures do not decide: the intervals of remove and leave overlap");
    expect(said).toContain("Beyond the bend, removed: 12/40, 0.30 (0.18 to 0.45), Known 2001*");
    expect(said).not.toContain("After 45 minutes, success");
    expect(said).toContain("Straight path: 0.25 mm left; path refused: it leaves less than your limit");
    expect(said).toContain("Platform 0.90 mm wide: 0.70 mm left");
    expect(said).not.toMatch(/\bbest way\b|\bsafe\b/i);
  });

  it("say what decides where the figures do, and that a wall is not known", () => {
    const base = sampleRemovalTold();
    const { wallLeftMm: _left, ...line } = base.sightLine ?? { wallLeftMm: 0 };
    const path = { verdict: "wall not known", says: "" };
    const told = sampleRemovalTold({
      figuresDecide: true,
      figuresSay: "They lie apart",
      sightLine: { ...line, path } as never,
    });
    expect(words(whole, told)).toContain("They lie apart");
    expect(words(whole, told)).not.toContain("do not decide");
    expect(words(whole, told)).toContain("Straight path: wall not known; no wall along the way is known");
  });

  it("list rules with when they were set, every attempt and the result", () => {
    const said = words();
    expect(said).toContain("Set before the first attempt: 45 min; 3 attempts; no dentine below 0.5 mm");
    expect(said).toContain("2 attempts, 21.5 min in all");
    expect(said).toContain("ultrasonic tip");
    expect(said).toContain("Bypassed: the wall grew thin");
    const setAt = "2024-03-06T10:00:00Z";
    expect(words({ ...whole, stopRules: { setAt, minutes: 45 } })).toContain("Set after the first attempt: 45 min");
    // Rules that were begun and never written are not said to be set.
    expect(words({ ...whole, stopRules: { setAt } })).not.toContain("attempt: ");
  });

  it("put the lowest, one in the middle and the highest of several groups on the slide, and all in the notes", () => {
    const base = sampleRemovalTold();
    const [own] = base.removalChance.filter(({ matches }) => matches === "yes");
    if (own === undefined) throw new Error("no group of this case");
    const group = (events: number) => ({ ...own, group: `with ${events}`, events, n: 40, share: events / 40 });
    const slide = (counts: readonly number[]) => {
      const [page] = pages(whole, sampleRemovalTold({ removalChance: counts.map(group) }));
      const shown = linesOfModel({ pages: page === undefined ? [] : [page] });
      const notes = (page?.notes ?? []).flatMap((note) => /^Group of this case: With (\d+), /.exec(note)?.[1] ?? []);
      return {
        shown: shown.flatMap((line) => /^With (\d+), .*\/40/.exec(line)?.[1] ?? []),
        notes,
        all: shown.join("\n"),
      };
    };
    const five = slide([20, 36, 4, 30, 12]);
    expect(five.shown).toEqual(["4", "20", "36"]);
    expect(five.notes).toEqual(["4", "12", "20", "30", "36"]);
    expect(five.all).toContain("Lowest, middle and highest of 5; 2 others in the notes");
    expect(slide([20, 36, 4, 30]).all).toContain("of 4; 1 other in the notes");
    expect(slide([20, 36, 4]).shown).toEqual(["4", "20", "36"]);
    expect(slide([20, 36, 4]).all).not.toContain("in the notes");
    expect(slide([20, 4]).shown).toEqual(["4", "20"]);
    expect(slide([20]).shown).toEqual(["20"]);
  });

  it("put groups that print no counts in the notes alone, unless there are no others", () => {
    const [own] = sampleRemovalTold().removalChance.filter(({ matches }) => matches === "yes");
    if (own === undefined) throw new Error("no group of this case");
    const { events: _events, n: _n, ...bare } = own;
    const others = [0.1, 0.99].map((share) => ({ ...bare, group: "not counted", share }));
    const slide = (groups: ReturnType<typeof sampleRemovalTold>["removalChance"]) => {
      const [page] = pages(whole, sampleRemovalTold({ removalChance: groups }));
      const alone = page === undefined ? [] : [{ ...page, notes: [] }];
      return { said: linesOfModel({ pages: alone }).join("\n"), notes: page?.notes ?? [] };
    };
    const mixed = slide([own, ...others]);
    expect(mixed.said).toContain("12/40");
    expect(mixed.said).not.toContain("Not counted");
    expect(mixed.said).toContain("2 others in the notes");
    expect(mixed.notes.filter((note) => note.startsWith("Group of this case: Not counted"))).toHaveLength(2);
    const four = [4, 8, 12, 16].map((events) => ({ ...own, events, share: events / 40 }));
    expect(slide([...four, ...others]).said).toContain(
      "Lowest, middle and highest of 4 that print counts; 3 others in the notes",
    );
    expect(slide(others).said).toContain("Not counted, removed: 0.10");
  });

  it("put the lowest and the highest of several groups on the hand-out, not the first alone", () => {
    const base = sampleRemovalTold();
    const [own] = base.removalChance.filter(({ matches }) => matches === "yes");
    if (own === undefined) throw new Error("no group of this case");
    const group = (name: string, events: number) => ({ ...own, group: name, events, n: 40, share: events / 40 });
    const told = sampleRemovalTold({ removalChance: [group("Middle", 20), group("Most", 36), group("Least", 4)] });
    const said = linesOfModel(handout(withPiece(known, whole, told))).join("\n");
    expect(said).toMatch(/the lowest and the highest of 3 groups of this case: Least.*4\/40.*; Most.*36\/40/);
    expect(said).not.toContain("Middle");
    // A share whose counts were not printed stands at no end while others have theirs.
    const { events: _events, n: _n, ...bare } = own;
    const mixed = sampleRemovalTold({
      removalChance: [{ ...bare, group: "bare", share: 0.01 }, group("most", 36), group("least", 4)],
    });
    expect(linesOfModel(handout(withPiece(known, whole, mixed))).join("\n")).toMatch(
      /the highest of 2 groups of this case that print counts: Least.*4\/40.*; Most.*36\/40/,
    );
  });

  it("leave the second page away while nothing is set, tried or ended, and both without a removal", () => {
    expect(pages({})).toHaveLength(1);
    expect(removalPages(known)).toEqual([]);
  });

  it("name the place of every number, which holds it", () => {
    const told = sampleRemovalTold();
    const numbers = numbersIn({ pages: pages() });
    expect(numbers.length).toBeGreaterThan(6);
    for (const { path, text } of numbers)
      expect(Number(valueAtPath(told, path)).toFixed(text.split(".")[1]?.length ?? 0)).toBe(text);
  });

  it("stand in the deck after the mishap, and on the hand-out in a line", () => {
    const source = withPiece(known, whole);
    const titles = deck(source).pages.map(({ title }) => title);
    expect(titles.indexOf("Removal: the ways side by side, MB1")).toBe(titles.indexOf("Separated instrument") + 1);
    const line = linesOfModel(handout(source)).find((one) => one.startsWith("Removal weighed, MB1"));
    expect(line).toMatch(/Set before the first attempt.*2 attempts, 21\.5 min in all; bypassed\. Published: .*12\/40/);
    const bare = linesOfModel(handout(withPiece(known, {}))).find((one) => one.startsWith("Removal weighed, MB1"));
    expect(bare).toContain("No stop rules; no attempt.");
  });
});
