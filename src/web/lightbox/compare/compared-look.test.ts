import { describe, expect, it } from "vitest";
import { blinked, firstLook, layerStyle, squaresBy, swipedBy, swipedTo, waysToLook } from "./compared-look.ts";

describe("looking at two films", () => {
  it("has a key and a name for each way, none of them twice", () => {
    expect(new Set(waysToLook.map(({ keys }) => keys)).size).toBe(waysToLook.length);
    expect(new Set(waysToLook.map(({ name }) => name)).size).toBe(waysToLook.length);
  });

  it("moves the line by a fiftieth or a tenth, there and back, and never out of the pane", () => {
    const look = firstLook("swipe");
    expect(swipedBy(look, 1, false).swipeShare).toBe(0.52);
    expect(swipedBy(look, -1, true).swipeShare).toBe(0.4);
    expect(swipedBy(swipedBy(look, 1, false), -1, false)).toEqual(look);
    expect(swipedTo(look, -0.3).swipeShare).toBe(0);
    expect(swipedTo(look, 1.4).swipeShare).toBe(1);
    expect(swipedBy(swipedTo(look, 0.99), 1, true).swipeShare).toBe(1);
  });

  it("shows the first film left of the line and the second right of it", () => {
    expect(layerStyle(swipedTo(firstLook("swipe"), 0.25))).toEqual({ clipPath: "inset(0 0 0 25%)" });
  });

  it("makes squares larger and smaller step by step, between 24 and 256 px", () => {
    let look = firstLook("checkerboard");
    expect(squaresBy(squaresBy(look, 1), -1)).toEqual(look);
    for (let step = 0; step < 20; step += 1) look = squaresBy(look, 1);
    expect(look.squarePx).toBe(256);
    for (let step = 0; step < 20; step += 1) look = squaresBy(look, -1);
    expect(look.squarePx).toBe(24);
    // Two squares make one period of the pattern.
    expect(layerStyle(look).maskSize).toBe("48px 48px");
  });

  it("shows one film and then the other while they blink, and the whole layer elsewhere", () => {
    const look = firstLook("blink");
    expect(layerStyle(look)).toEqual({ visibility: "hidden" });
    expect(layerStyle(blinked(look))).toEqual({ visibility: "visible" });
    expect(blinked(blinked(look))).toEqual(look);
    expect(layerStyle(firstLook("difference"))).toEqual({});
  });
});
