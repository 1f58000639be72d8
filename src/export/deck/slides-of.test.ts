import { describe, expect, it } from "vitest";
import { sampleSource } from "../../../test/sample-case.ts";
import { withPiece } from "../../../test/sample-removal.ts";
import { lesionThenAndNow } from "../../figures/lesion-then-and-now.ts";
import { type Block, type Page, says } from "../../pages/page-model.ts";
import { removalPages } from "../../pages/sections/removal.ts";
import { slideSize, slidesOf } from "./slides-of.ts";

const film = (columns: number, rows: number): Block => ({
  ...{ kind: "film", hash: "ab".repeat(32), columns, rows, caption: says("A film"), alternative: "" },
  overlay: lesionThenAndNow({ columns, rows, before: [], after: [] }),
});
const words: Block = { kind: "text", lines: [says("Words")] };
const page = (...blocks: Block[]): Page => ({ title: "Page", on: "", blocks, notes: ["said"] });
const counts = (of: Page): number[] => slidesOf(of).map(({ pictures }) => pictures.length);

describe("pictures of a page on slides", () => {
  it("stand with the words first, then two on a slide", () => {
    const [one, two] = slidesOf(page(film(1000, 760), film(1000, 760), film(1000, 760), words));
    expect([one?.pictures.length, two?.pictures.length]).toEqual([1, 2]);
    expect(one?.units.length).toBeGreaterThan(0);
    expect(two?.units).toEqual([]);
    expect(two?.notes).toEqual([]);
  });

  it("beside each other do not touch, and stay on the slide", () => {
    const sizes: readonly (readonly [number, number])[] = [
      [1000, 760],
      [800, 960],
      [600, 1600],
    ];
    for (const [columns, rows] of sizes) {
      const three = [1, 2, 3].map(() => film(columns, rows));
      const [, two] = slidesOf(page(...three, words));
      const [left, right] = two?.pictures.map(({ box }) => box) ?? [];
      if (left === undefined || right === undefined) throw new Error("not two pictures");
      expect(left.x + left.w).toBeLessThan(right.x);
      expect(right.x + right.w).toBeLessThanOrEqual(slideSize.w - 0.6);
      expect(right.y + right.h).toBeLessThan(slideSize.h - 0.5);
      expect(right.h / right.w).toBeCloseTo(rows / columns, 9);
    }
  });

  it("that are far wider than high, or the odd one out, stand alone", () => {
    const wide = film(1000, 200);
    expect(counts(page(film(1000, 760), film(1000, 760), wide, film(1000, 760), words))).toEqual([1, 1, 1, 1]);
    expect(counts(page(film(1000, 760), film(1000, 760), words))).toEqual([1, 1]);
    expect(counts(page(words))).toEqual([0]);
  });
});

describe("the pages of a removal", () => {
  it("fill one slide each, as long as its words are as short as they usually are", () => {
    const attempt = {
      at: "2024-03-06T09:00:00Z",
      minutes: 12,
      tool: "loop",
      tip: "",
      moved: "loosened",
      note: "",
    } as const;
    const removal = {
      stopRules: { setAt: "2024-03-06T08:00:00Z", minutes: 45 },
      attempts: [attempt, attempt, attempt],
    };
    const pages = removalPages(withPiece(sampleSource(), removal));
    expect(pages.map((one) => slidesOf(one).length)).toEqual([1, 1]);
  });
});
