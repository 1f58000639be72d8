import { describe, expect, it } from "vitest";
import { part, sampleSource } from "../../../test/sample-case.ts";
import { linesOfModel } from "../../../test/words-of-model.ts";
import type { BodyOf } from "../../record/parts.ts";
import { findingsPages } from "./findings.ts";

type Findings = BodyOf<"findings">;
const asked = "notAsked" as const;
const bare: Findings = {
  ...{ takenOn: "2024-03-04", note: "" },
  teeth: [
    {
      ...{ tooth: "26", role: "tooth", cold: { reply: "none" }, heat: { reply: "notDone" }, electric: "notDone" },
      ...{ percussion: "painful", palpation: "none", bite: "notDone", mobility: 0, probingMm: {} },
    },
  ],
  history: {
    ...{ spontaneousPain: asked, painToCold: "no", painToHeat: asked, relievedByCold: asked },
    ...{ painOnBiting: "yes", trauma: asked, recentOnset: asked },
  },
  seen: { swelling: "notDone", sinusTract: "none", caries: "notDone", crack: "notDone", restoration: "", fever: asked },
  onFilm: {
    ...{ ligament: "notDone", lamina: "notDone", lucency: "apical", sclerosis: asked, resorption: "notDone" },
    ...{ apex: "notDone", calcified: asked, earlierFilling: "notDone" },
  },
};
const told = (body: Findings): string[] =>
  linesOfModel({ pages: findingsPages(sampleSource([part("findings", "sheet-1", body)])) });

describe("the page of findings", () => {
  it("tells what was asked, seen and read, and nothing of what was not", () => {
    const lines = told(bare);
    expect(lines).toEqual(expect.arrayContaining(["Reports pain on biting", "Denies pain to cold"]));
    expect(lines).toContain("Sinus tract none");
    expect(lines).toContain("On the film: lucency apical");
  });

  it("tells of the further questions where they were answered", () => {
    const lines = told({
      ...bare,
      history: {
        ...{ ...bare.history, nightPain: "yes", trismus: "no", coldLingersSeconds: 12, traumaOn: "2024-02-01" },
        ...{ painLike: ["joint", "sinus"], reproduced: "byNoTest" },
      },
      seen: {
        ...{ ...bare.seen, swelling: "extraoral", swellingAt: ["cheek", "neck"], swellingOnset: "rapid" },
        ...{ pus: "yes", nodes: "no", exposure: "caries", temperatureC: 38.4 },
      },
      onFilm: { ...bare.onFilm, lesionFits: "no", lucencyAtRoots: ["MB", "P"] },
    });
    expect(lines).toEqual(
      expect.arrayContaining([
        "Reports pain on biting, pain at night",
        "Denies pain to cold, less opening of the mouth",
        "Pain to cold lasts 12 s; trauma on 2024-02-01; pain like joint, sinus; brought back by no test",
        "Swelling outside the mouth; swelling at the cheek, neck; onset of the swelling rapid; pus yes; lymph nodes no; sinus tract none; pulp exposed by caries; temperature 38.4 °C",
        "On the film: lucency apical; at root MB, P; fits a tooth's infection: no",
      ]),
    );
  });

  it("leaves out a complaint that nobody tried to bring back", () => {
    const lines = told({ ...bare, history: { ...bare.history, reproduced: "notTried" } });
    expect(lines.filter((line) => line.includes("brought back"))).toEqual([]);
  });
});
