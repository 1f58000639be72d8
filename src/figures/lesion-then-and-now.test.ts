import { describe, expect, it } from "vitest";
import { lesionThenAndNow } from "./lesion-then-and-now.ts";
import { svgText } from "./svg-text.ts";

const square = (from: number, to: number): [number, number][] => [
  [from, from],
  [to, from],
  [to, to],
  [from, to],
];
const figure = lesionThenAndNow({ columns: 960, rows: 480, before: [square(100, 300)], after: [square(150, 250)] });

describe("a lesion then and now", () => {
  it("stands in the film's own pixels, whose first has its middle at 0", () => {
    const text = svgText(figure);
    expect(text).toContain('viewBox="0 0 960 480"');
    expect(text).toContain("translate(0.5 0.5)");
    expect(text).toContain("M100 100L300 100L300 300L100 300Z");
    expect(text).toContain("M150 150L250 150L250 250L150 250Z");
  });

  it("tells the two apart by dash and by word as well as by hue", () => {
    const text = svgText(figure);
    const [before = "", after = ""] = ["before", "after"].map(
      (when) => new RegExp(`<path[^>]*data-part="${when}"[^>]*>`).exec(text)?.[0],
    );
    expect(before).toContain("stroke-dasharray");
    expect(after).not.toContain("stroke-dasharray");
    expect(text).toMatch(/>before</);
    expect(text).toMatch(/>after</);
  });

  it("says what is outlined, and that nothing is", () => {
    expect(figure.alternative).toBe(
      "Outlines on the film: one lesion as outlined before; one lesion as outlined after.",
    );
    const empty = lesionThenAndNow({ columns: 10, rows: 10, before: [], after: [] });
    expect(empty.alternative).toBe("No lesion is outlined.");
    const two = lesionThenAndNow({ columns: 960, rows: 480, before: [], after: [square(1, 9), square(20, 30)] });
    expect(two.alternative).toBe("Outlines on the film: 2 lesions as outlined after.");
  });
});
