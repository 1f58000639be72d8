import { describe, expect, it } from "vitest";
import { diagnosisOf } from "../../../test/diagnosis-sheet.ts";
import { vignettes } from "../../../test/diagnosis-vignettes.ts";

// Published short cases; findings in our words, the accepted answer as printed beside, sources in the file of cases.
describe("diagnosis: published cases with their accepted answer", () => {
  it.each(
    vignettes.map(
      (one) =>
        [
          `${one.name}${one.because === undefined ? "" : `; not as printed or only possible: ${one.because}`}`,
          one,
        ] as const,
    ),
  )("%s", (_name, { input, ours, also }) => {
    const { pulpal, apical, apicalAlso } = diagnosisOf(input);
    expect([pulpal.term, pulpal.status, apical.term, apical.status]).toEqual(ours);
    expect(apicalAlso).toBe(also);
  });

  it.each(vignettes.filter(({ ours, printed }) => ours[0] !== printed[0] || !printed[1].startsWith(ours[2])))(
    "$name: says why it is not the printed answer",
    ({ because }) => {
      expect(because).toMatch(/^.{20}/);
    },
  );

  it("gives another term than the printed one in one case alone, where treatment had begun; elsewhere it stays open", () => {
    const other = vignettes.filter(
      ({ ours, printed }) =>
        (ours[0] !== printed[0] && ours[0] !== "not determined") ||
        (!printed[1].startsWith(ours[2]) && ours[2] !== "not determined" && printed[1] !== "watch"),
    );
    expect(other.map(({ name }) => name)).toEqual(["the same child a month later, opened and dressed, face swollen"]);
    expect(vignettes.filter(({ ours }) => ours[0] === "not determined" || ours[2] === "not determined").length).toBe(5);
  });

  it("names what would separate every term that it leaves open", () => {
    for (const { input } of vignettes)
      for (const axis of [diagnosisOf(input).pulpal, diagnosisOf(input).apical]) {
        if (axis.status === "not determined") expect(axis.alternatives.length).toBeGreaterThan(0);
        for (const { separatedBy } of axis.alternatives) expect(separatedBy).not.toBe("");
      }
  });
});
