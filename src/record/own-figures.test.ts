import { describe, expect, it } from "vitest";
import { isInFull } from "./own-figures.ts";

describe("a figure of the person's own", () => {
  it.each([
    [{ events: 8, n: 10 }, true],
    [{ events: 0, n: 10 }, true],
    [{ percent: 80 }, true],
    [{ percent: 0 }, true],
    [{}, false],
    [{ events: 8 }, false],
    [{ n: 10 }, false],
    [{ events: 8, n: 10, percent: 80 }, false],
    [{ n: 10, percent: 80 }, false],
  ])("%j is in full: %s", (figure, is) => {
    expect(isInFull(figure)).toBe(is);
  });
});
