import type { z } from "zod";
import { diagnosisTopic } from "../src/core/diagnosis/diagnosis-topic.ts";
import { answer } from "../src/core/topic.ts";

/** A sheet of findings as a person may write it: what is left out was not done. */
export type Sheet = Omit<z.input<typeof diagnosisTopic.input>, "teeth">;
/** One tooth of the sheet of tests, without its number and role. */
export type Tests = Partial<z.input<typeof diagnosisTopic.input>["teeth"][number]>;

/** The input about one tooth with what was tested on it and, where given, on one control. */
export const sheetOf = (tests: Tests, rest: Sheet = {}, control?: Tests) => ({
  ...rest,
  teeth: [
    { tooth: "36", role: "tooth" as const, ...tests },
    ...(control === undefined ? [] : [{ tooth: "35", role: "control" as const, ...control }]),
  ],
});

/** What the table says of a sheet. */
export const diagnosisOf = (input: unknown) => answer(diagnosisTopic, input);

/** Every row that an answer names. */
export function rowsIn(output: ReturnType<typeof diagnosisOf>): string[] {
  const { pulpal, apical, urgent, contradictions, asks, sourceBecause, cautions } = output;
  const entries = [pulpal.for, pulpal.against, apical.for, apical.against, urgent, contradictions, asks, sourceBecause];
  const cautioned = cautions.flatMap((text) => text.match(/\[(Q\d+)\]$/)?.[1] ?? []);
  return [...entries.flat().map(({ row }) => row), ...cautioned];
}

/** A tooth without a finding, everything done: tests, history, soft tissues, film, existing treatment. */
export const healthy = sheetOf(
  {
    cold: { reply: "normal", lingersSeconds: 1 },
    heat: { reply: "normal", lingersSeconds: 1 },
    electric: 32,
    ...{ percussion: "none", palpation: "none", bite: "none", mobility: 0 },
    probingMm: { mesiobuccal: 3, buccal: 2, distobuccal: 3, mesiolingual: 3, lingual: 2, distolingual: 3 },
  },
  {
    takenOn: "2026-03-02",
    history: {
      ...{ spontaneousPain: "no", nightPain: "no", referredPain: "no", painToCold: "no", painToHeat: "no" },
      ...{ painToSweet: "no", relievedByCold: "no", painOnBiting: "no", painOnRelease: "no", trauma: "no" },
      ...{ trismus: "no", troubleSwallowing: "no", troubleBreathing: "no", numbLip: "no" },
    },
    seen: {
      ...{ swelling: "none", pus: "no", nodes: "no", fever: "no", temperatureC: 36.8 },
      ...{ sinusTract: "none", caries: "none", exposure: "none", crack: "none" },
    },
    onFilm: {
      ...{ ligament: "normal", lamina: "intact", lucency: "none", sclerosis: "no", resorption: "none" },
      ...{ apex: "closed", calcified: "no", earlierFilling: "none" },
    },
    existing: [],
    medical: { antiresorptive: "no" },
  },
  { cold: { reply: "normal", lingersSeconds: 1 }, electric: 30, percussion: "none", palpation: "none", bite: "none" },
);
