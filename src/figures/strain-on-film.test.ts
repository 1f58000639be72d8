import { describe, expect, it } from "vitest";
import { expectClear } from "./drawn-for-tests.ts";
import { type StrainOnFilm, strainOnFilm } from "./strain-on-film.ts";
import { svgText } from "./svg-text.ts";

const seated = [0.02, 0.06, 0.11, 0].map((strain, at) => ({ at: [200 + 10 * at, 300 - 60 * at] as const, strain }));
const given: StrainOnFilm = {
  ...{ columns: 480, rows: 360, name: "25/.06 in MB1", seated },
  tightest: { at: [220, 180], label: "most 11.0 %" },
};
const drawn = (more: Partial<StrainOnFilm> = {}): string => svgText(strainOnFilm({ ...given, ...more }));

describe("strainOnFilm", () => {
  it("is drawn in the film's pixels, each piece in the step of its larger strain and broader with it", () => {
    const text = drawn();
    expect(text).toContain('viewBox="0 0 480 360"');
    const pieces = [...text.matchAll(/stroke-width="([\d.]+)"[^>]*/g)];
    expect(pieces.length).toBeGreaterThan(0);
    const steps = [...text.matchAll(/data-part="piece" data-step="(\d)"[^>]*stroke-width="([\d.]+)"/g)];
    expect(steps.map(([, step]) => step)).toEqual(["3", "4", "4"]);
    expect(Number(steps[1]?.[2])).toBeGreaterThan(Number(steps[0]?.[2]));
  });

  it("says the span of the strain and what is marked", () => {
    expect(strainOnFilm(given).alternative).toBe(
      "Strain of 25/.06 in MB1 on the film: strain 0.0 to 11.0 %. Marked: most 11.0 %.",
    );
    expect(strainOnFilm({ ...given, seated: [], tightest: undefined }).alternative).toBe(
      "Strain of 25/.06 in MB1 on the film: nothing is drawn.",
    );
  });

  it("marks the tightest place and one that is pointed at, by shapes of their own", () => {
    expect(drawn()).toMatch(/<circle [^>]*data-part="tightest"/);
    expect(drawn({ place: [210, 240] })).toMatch(/<path data-part="place"/);
    expect(drawn({ tightest: undefined })).not.toContain('data-part="tightest"');
  });

  it("grows with the film and keeps its words inside, clear of each other", () => {
    const large = {
      columns: 4800,
      rows: 3600,
      seated: seated.map(({ at: [u, v], strain }) => ({ at: [10 * u, 10 * v] as const, strain })),
    };
    const width = (text: string) => Number(/data-part="piece"[^>]*stroke-width="([\d.]+)"/.exec(text)?.[1]);
    expect(width(drawn(large)) / width(drawn())).toBeCloseTo(10, 1);
    expectClear(strainOnFilm({ ...given, ...large, tightest: { at: [4790, 3590], label: "most 11.0 %" } }));
    expectClear(strainOnFilm(given));
  });
});
