import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type BoxLayout,
  filmInHand,
  laidOut,
  nextInHand,
  oneFilm,
  type PaneCount,
  putIn,
  takenInHand,
  withoutMissing,
} from "./box-layout.ts";

const strip = ["a", "b", "c", "d", "e"];

describe("films side by side", () => {
  it("are the one in hand and those that follow it", () => {
    expect(laidOut(oneFilm("b"), 2, strip)).toEqual({ count: 2, films: ["b", "c"], inHand: 0 });
    expect(laidOut(oneFilm("d"), 4, strip)).toEqual({ count: 4, films: ["d", "e", "a", "b"], inHand: 0 });
  });

  it("leave panes empty when there are no more", () => {
    expect(laidOut(oneFilm("a"), 4, ["a", "b"]).films).toEqual(["a", "b", undefined, undefined]);
    expect(laidOut(oneFilm(undefined), 2, []).films).toEqual([undefined, undefined]);
  });

  it("stay when panes are added", () => {
    const two: BoxLayout = { count: 2, films: ["e", "a"], inHand: 1 };
    expect(laidOut(two, 4, strip)).toEqual({ count: 4, films: ["e", "a", "b", "c"], inHand: 1 });
  });

  it("keep the one in hand when panes are taken away", () => {
    const four: BoxLayout = { count: 4, films: ["a", "b", "c", "d"], inHand: 3 };
    expect(laidOut(four, 2, strip)).toEqual({ count: 2, films: ["a", "d"], inHand: 1 });
    expect(laidOut(four, 1, strip)).toEqual(oneFilm("d"));
    expect(laidOut({ ...four, inHand: 0 }, 2, strip).films).toEqual(["a", "b"]);
  });

  it("come down to one that is there when an empty pane is in hand", () => {
    expect(laidOut({ count: 2, films: ["a", undefined], inHand: 1 }, 1, strip)).toEqual(oneFilm("a"));
  });

  it("go into the pane in hand, or into another which is then in hand", () => {
    const two: BoxLayout = { count: 2, films: ["a", "b"], inHand: 0 };
    expect(putIn(two, "e")).toEqual({ count: 2, films: ["e", "b"], inHand: 0 });
    expect(putIn(two, "e", 1)).toEqual({ count: 2, films: ["a", "e"], inHand: 1 });
  });

  it("change places with a film that already lies there", () => {
    const two: BoxLayout = { count: 2, films: ["a", "b"], inHand: 0 };
    expect(putIn(two, "b").films).toEqual(["b", "a"]);
    expect(putIn(two, "a").films).toEqual(["a", "b"]);
  });

  it("are taken in hand in turn", () => {
    const two: BoxLayout = { count: 2, films: ["a", "b"], inHand: 0 };
    expect(nextInHand(two).inHand).toBe(1);
    expect(nextInHand(nextInHand(two))).toEqual(two);
    expect(takenInHand(two, 0)).toBe(two);
  });

  it("leave an empty pane when they are taken out of the case", () => {
    const two: BoxLayout = { count: 2, films: ["a", "b"], inHand: 0 };
    expect(withoutMissing(two, ["a"]).films).toEqual(["a", undefined]);
    expect(withoutMissing(two, strip)).toBe(two);
  });

  it("never lie there twice, and always fill their panes", () => {
    const act = fc.oneof(
      fc.constantFrom<PaneCount>(1, 2, 4).map((count) => (now: BoxLayout) => laidOut(now, count, strip)),
      fc.tuple(fc.constantFrom(...strip), fc.nat(3)).map(
        ([film, pane]) =>
          (now: BoxLayout) =>
            putIn(now, film, pane % now.count),
      ),
      fc.constant(nextInHand),
    );
    fc.assert(
      fc.property(fc.array(act, { maxLength: 20 }), (acts) => {
        const layout = acts.reduce((now, one) => one(now), oneFilm("a"));
        const there = layout.films.filter((film) => film !== undefined);
        expect(new Set(there).size).toBe(there.length);
        expect(layout.films).toHaveLength(layout.count);
        expect(filmInHand(layout)).toBeDefined();
      }),
    );
  });
});
