import { describe, expect, it } from "vitest";
import { svgText } from "./svg-text.ts";
import { element, figureOf, numberText, pathThrough, smoothClosedPath } from "./svg-tree.ts";

describe("svgText", () => {
  const figure = (words: string, alternative = "A title. A description: of it.") =>
    figureOf({ width: 100, height: 50 }, 200, alternative, [
      element("text", { x: 1 / 3, "data-what": words }, [words]),
    ]);

  it("escapes what XML would read, in words and in attributes", () => {
    const text = svgText(figure(`<b> & "it's"`));
    expect(text).toContain(">&lt;b&gt; &amp; &quot;it&#39;s&quot;</text>");
    expect(text).toContain('data-what="&lt;b&gt; &amp; &quot;it&#39;s&quot;"');
  });

  it("leaves out signs that XML has no form for, and keeps all others", () => {
    expect(svgText(figure("a\u0000b\u001f\ud800\uffff\tc \u{1f9b7}é"))).toContain(">ab\tc \u{1f9b7}é</text>");
  });

  it("has a role, a title, a description, a view and a size in proportion to it", () => {
    const text = svgText(figure("x"));
    expect(text).toMatch(/^<svg [^>]*role="img"/);
    expect(text).toContain("<title>A title.</title><desc>A description: of it.</desc>");
    expect(text).toMatch(/viewBox="0 0 100 50" width="200" height="100" font-family="Inter"/);
  });

  it("needs no description where the alternative is one sentence", () => {
    expect(svgText(figure("x", "Only this."))).toContain("<title>Only this.</title><text");
  });

  it("writes numbers in two decimals, and never a minus zero", () => {
    expect([1 / 3, -0.001, 2, 1.005e3].map(numberText)).toEqual(["0.33", "0", "2", "1005"]);
  });
});

describe("paths", () => {
  const square = [
    { x: 0, y: 0 },
    { x: 2, y: 0 },
    { x: 2, y: 2 },
    { x: 0, y: 2 },
  ];

  it("go straight through points, open or closed", () => {
    expect(pathThrough(square.slice(0, 2))).toBe("M0 0L2 0");
    expect(pathThrough(square.slice(0, 3), true)).toBe("M0 0L2 0L2 2Z");
  });

  // First cubic of a closed curve whose slopes are those of the chords over the neighbours: handles at a third of half a chord.
  it("go smoothly through every point and close", () => {
    expect(smoothClosedPath(square)).toMatch(/^M0 0C0\.33 -0\.33 1\.67 -0\.33 2 0C.*0 0Z$/);
  });

  it("leave out attributes without a value", () => {
    expect(element("g", { fill: undefined, x: 0 }).attributes).toEqual({ x: 0 });
  });
});
