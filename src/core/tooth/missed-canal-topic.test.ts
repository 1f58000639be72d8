import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import type { MissedCanalInput } from "./missed-canal/missed-canal-input.ts";
import type { MissedCanalOutput } from "./missed-canal/missed-canal-output.ts";
import { missedCanalTopic } from "./missed-canal-topic.ts";

type Look = MissedCanalInput["evidence"][number];

const chance = (tooth: string, feature: string, evidence: readonly Look[] = [], more: object = {}): MissedCanalOutput =>
  answer(missedCanalTopic, { tooth, feature, evidence, ...more });

/** A tooth with a prior that can be written down: 13 of 734 lower third molars with a third root. */
const third = (evidence: readonly Look[] = []) => chance("38", "thirdRoot", evidence);
const before = 13.5 / 735;
const odds = (share: number) => share / (1 - share);

const seen = (sensitivity: number, specificity: number, kind: Look["kind"] = "cbct"): Look => ({
  ...{ kind, result: "seen", sensitivity, specificity },
});
const notSeen = (sensitivity: number, specificity: number, kind: Look["kind"] = "cbct"): Look => ({
  ...seen(sensitivity, specificity, kind),
  result: "notSeen",
});

describe("missedCanal C2: one series is the beta distribution of its count", () => {
  // 7 of 1024 teeth, J Endod 2009;35:202-205; scipy 1.17.1: beta.ppf(.025 and .975, 7.5, 1017.5).
  it("of Germany", () => {
    const { prior, cautions } = chance("46", "thirdRoot", [], { population: "Germany" });
    expect(prior).toMatchObject({ n: 7, N: 1024, method: "oneSeries", source: "schafer-2009 (Germany)" });
    expect(prior.mean).toBeCloseTo(7.5 / 1025, 12);
    expect(prior.interval.low).toBeCloseTo(0.0030627294533596, 10);
    expect(prior.interval.high).toBeCloseTo(0.0133746336615929, 10);
    expect(cautions).toEqual(
      expect.arrayContaining([
        expect.stringContaining("One series shows no spread"),
        "Read on films, which hide roots, so rather too low: Germany (schafer-2009).",
      ]),
    );
  });

  it("says of a pooled count over many studies that it shows no spread either", () => {
    const { prior, cautions } = chance("47", "middleMesial");
    expect(prior).toMatchObject({ method: "oneSeries", n: 99, N: 7624 });
    expect(cautions[0]).toContain("One count over 33 series or regions shows no spread");
  });
});

describe("missedCanal C3: two series are spanned", () => {
  it("from the lower end of the one to the upper end of the other", () => {
    const { prior, cautions } = chance("36", "thirdRoot", [], { population: "Korea" });
    expect(prior).toMatchObject({ method: "twoSeries", n: 162 + 507, N: 726 + 1958 });
    // scipy 1.17.1: beta.ppf(.025, 162.5, 564.5) and beta.ppf(.975, 507.5, 1451.5).
    expect(prior.interval.low).toBeCloseTo(0.19399422703918, 9);
    expect(prior.interval.high).toBeCloseTo(0.27868658878463, 9);
    expect(prior.mean).toBeCloseTo((162.5 / 727 + 507.5 / 1959) / 2, 12);
    expect(cautions.join(" ")).toContain("Two series show little");
  });
});

describe("missedCanal C4: several series give the next population", () => {
  // metafor 3.8-1 (R 4.2.2): rma(measure PLO, method PM, test t), predict(): its interval, and the mean over 200000 parts.
  it.each([
    ["second molars", "27", "secondMesiobuccal", {}, 0.426376, 0.12066392, 0.7912748],
    ["alike ones", "36", "thirdRoot", { population: "China" }, 0.2223245, 0.18673587, 0.26068288],
  ])("by how they differ: %s", (_, tooth, feature, more, mean, low, high) => {
    const { prior } = chance(tooth, feature, [], more);
    expect(prior.method).toBe("nextPopulation");
    expect(prior.interval.low).toBeCloseTo(low, 6);
    expect(prior.interval.high).toBeCloseTo(high, 6);
    // The mean of 2000 parts; the heavy tails of two degrees of freedom leave it right to four digits.
    expect(prior.mean).toBeCloseTo(mean, 4);
  });

  // Worked in scipy 1.17.1 from the printed figures alone (3875/5250, 48.0 to 97.6 % over 21 regions; four further series):
  // expected range by quadrature, weights, Student's t with 20 degrees of freedom, mean by quadrature.
  it("by the range of a survey: upper first molars, wide as the regions are", () => {
    const { prior, basis } = chance("26", "secondMesiobuccal");
    expect(prior.mean).toBeCloseTo(0.69115, 4);
    expect(prior.interval.low).toBeCloseTo(0.24487, 5);
    expect(prior.interval.high).toBeCloseTo(0.956636, 5);
    expect(prior).toMatchObject({ n: 3875 + 511 + 308 + 384 + 247, N: 5250 + 1000 + 400 + 550 + 362 });
    expect(basis.assumptions[0]).toContain("0.99 on the logit scale");
    // A pooled count of 7562 teeth alone would be sure to 1 %.
    expect(prior.interval.high - prior.interval.low).toBeGreaterThan(0.5);
  });

  it("and of a survey that stands alone: lower first premolars", () => {
    const { prior } = chance("44", "lingualCanal");
    expect(prior.mean).toBeCloseTo(0.242763, 4);
    expect(prior.interval.low).toBeCloseTo(0.141567, 5);
    expect(prior.interval.high).toBeCloseTo(0.371606, 5);
  });

  it("leaves out what a wider series counts, unless its region is asked for", () => {
    const all = chance("26", "secondMesiobuccal").prior.series.map(({ region }) => region);
    expect(all).toEqual(["world", "China", "United States", "Chile", "Brazil"]);
    expect(chance("26", "secondMesiobuccal", [], { population: "belgium" }).prior).toMatchObject({ n: 244, N: 250 });
    expect(chance("26", "secondMesiobuccal", [], { population: "World" }).prior.series).toHaveLength(5);
  });

  it("is the same for both sides of the mouth", () => {
    for (const [left, right, feature] of [
      ["36", "46", "secondDistal"],
      ["37", "47", "cShaped"],
      ["31", "41", "lingualCanal"],
      ["16", "26", "secondMesiobuccal"],
    ] as const)
      expect(chance(left, feature)).toEqual(chance(right, feature));
  });
});

describe("missedCanal C5: where sensitivity and specificity come from", () => {
  it("are published for CBCT of a second mesiobuccal canal", () => {
    // Sensitivity 96.6 %, specificity 85 % (review of 12 studies, 2021): LR+ 6.44, LR- 0.04.
    const [positive] = chance("26", "secondMesiobuccal", [{ kind: "cbct", result: "seen" }]).steps;
    expect(positive?.likelihoodRatio).toBeCloseTo(0.966 / 0.15, 12);
    const [negative] = chance("26", "secondMesiobuccal", [{ kind: "cbct", result: "notSeen" }]).steps;
    expect(negative?.likelihoodRatio).toBeCloseTo(0.034 / 0.85, 12);
    expect(negative?.from).toContain("aung-2021");
  });

  it("show the series that differs beside it, where the look was made", () => {
    const differing = expect.stringContaining("a sensitivity of 0.88 and a specificity of 0.88");
    expect(chance("26", "secondMesiobuccal", [{ kind: "cbct", result: "seen" }]).cautions).toContainEqual(differing);
    expect(chance("26", "secondMesiobuccal").cautions).not.toContainEqual(differing);
  });

  it("are the person's own where given, each by itself", () => {
    const evidence: Look[] = [{ kind: "cbct", result: "seen", specificity: 0.95, from: "our own scans" }];
    const [step] = chance("26", "secondMesiobuccal", evidence).steps;
    expect(step).toMatchObject({ sensitivity: 0.966, specificity: 0.95 });
    expect(step?.from).toBe("own figures: our own scans; the rest: review of 12 studies (2021) (aung-2021)");
    expect(third([seen(0.9, 0.8)]).steps[0]?.from).toBe("own figures");
  });

  it("of a trough are the orifices in its reach, and only the specificity is asked for", () => {
    // J Endod 2017;43:1329-1331: 72, 5, 9 and 7 of 93 orifices at the level, within 1 mm, within 2 mm, deeper.
    const trough = (depthMm: number): Look => ({ kind: "troughing", result: "notSeen", depthMm, specificity: 0.99 });
    const sensitivityAt = (depthMm: number) => chance("46", "middleMesial", [trough(depthMm)]).steps[0]?.sensitivity;
    expect(sensitivityAt(0)).toBeCloseTo(0.7741, 3);
    expect(sensitivityAt(0.9)).toBeCloseTo(0.7741, 3);
    expect(sensitivityAt(1)).toBeCloseTo(0.8279, 3);
    expect(sensitivityAt(3)).toBeCloseTo(0.9248, 3);
    expect(chance("46", "middleMesial", [trough(1)]).cautions.join(" ")).toContain("may still be overlooked");
    const { specificity: _, ...bare } = trough(1);
    expect(chance("46", "middleMesial", [bare]).notComputed[0]?.why).toContain("give evidence[0].specificity, 0 to 1");
  });

  it("where nobody published them are asked for by their paths, and the look is not counted", () => {
    const evidence: Look[] = [
      { kind: "microscope", result: "notSeen" },
      notSeen(0.9, 0.8),
      { kind: "dye", result: "seen" },
    ];
    const out = third(evidence);
    expect(out.steps.map(({ evidence: at }) => at)).toEqual([1]);
    expect(out.notComputed.map(({ name }) => name)).toEqual(["evidence[0]", "evidence[2]"]);
    expect(out.notComputed[1]?.why).toContain("give evidence[2].sensitivity and evidence[2].specificity");
    expect(out.posterior).toEqual(third([notSeen(0.9, 0.8)]).posterior);
  });

  it("of a lesion round one root name what is published of any root", () => {
    const [missing] = third([{ kind: "lesionOnOneRoot", result: "yes" }]).notComputed;
    expect(missing?.why).toContain("85.1 % of root-filled teeth with a missed canal, 56.3 % without");
  });
});

describe("missedCanal C6: Bayes' rule", () => {
  it.each([
    ["seen", seen(0.9, 0.8), 0.9 / 0.2],
    ["not seen", notSeen(0.9, 0.8), 0.1 / 0.8],
    ["a sign", { ...seen(0.7, 0.6, "offCentreInstrument"), result: "yes" } as Look, 0.7 / 0.4],
    ["no sign", { ...seen(0.7, 0.6, "lesionOnOneRoot"), result: "no" } as Look, 0.3 / 0.6],
  ])("multiplies the odds: %s", (_, look, ratio) => {
    const { steps, posterior } = third([look]);
    expect(steps[0]?.likelihoodRatio).toBeCloseTo(ratio, 12);
    expect(odds(posterior.mean)).toBeCloseTo(odds(before) * ratio, 12);
  });

  it("takes the interval's ends through the same looks; scipy 1.17.1: beta.ppf of 13.5 and 721.5", () => {
    const { posterior, steps } = third([seen(0.9, 0.8), notSeen(0.5, 0.9, "dye")]);
    const ratio = (0.9 / 0.2) * (0.5 / 0.9);
    expect(odds(posterior.interval.low)).toBeCloseTo(odds(0.00996288273645951) * ratio, 9);
    expect(odds(posterior.interval.high)).toBeCloseTo(odds(0.029241742852361592) * ratio, 9);
    expect(steps.at(-1)).toMatchObject({ posterior: posterior.mean, interval: posterior.interval });
  });

  const anyLook = fc
    .record({
      positive: fc.boolean(),
      sensitivity: fc.double({ min: 0.01, max: 0.99, noNaN: true }),
      specificity: fc.double({ min: 0.01, max: 0.99, noNaN: true }),
    })
    .map(
      ({ positive, sensitivity, specificity }): Look => ({
        ...seen(sensitivity, specificity),
        result: positive ? "seen" : "notSeen",
      }),
    );

  it("does not care for the order, and keeps the mean between the ends", () => {
    fc.assert(
      fc.property(fc.array(anyLook, { minLength: 1, maxLength: 5 }), (looks) => {
        const forth = third(looks).posterior;
        const back = third([...looks].reverse()).posterior;
        expect(back.mean).toBeCloseTo(forth.mean, 9);
        expect(forth.interval.low).toBeLessThanOrEqual(forth.mean);
        expect(forth.interval.high).toBeGreaterThanOrEqual(forth.mean);
      }),
      { numRuns: 40 },
    );
  });

  it("of all results together comes back to where it began", () => {
    // The chance of each result times the chance after it, added up over both results.
    fc.assert(
      fc.property(anyLook, ({ sensitivity = 0, specificity = 0 }) => {
        const positive = before * sensitivity + (1 - before) * (1 - specificity);
        const meanAfter = (look: Look) => third([look]).posterior.mean;
        const together =
          positive * meanAfter(seen(sensitivity, specificity)) +
          (1 - positive) * meanAfter(notSeen(sensitivity, specificity));
        expect(together).toBeCloseTo(before, 12);
      }),
      { numRuns: 40 },
    );
  });

  it("of a look that knows nothing changes nothing", () => {
    expect(third([seen(0.3, 0.7), notSeen(0.5, 0.5)]).posterior.mean).toBeCloseTo(before, 12);
  });

  it("is certain where a look is said to be without error: the ratio is unbounded, or 0", () => {
    const found = third([seen(0.6, 1), notSeen(0.6, 0.9, "dye")]);
    expect(found.steps.map(({ likelihoodRatio }) => likelihoodRatio)).toEqual([
      "unbounded",
      expect.closeTo(0.4 / 0.9, 12),
    ]);
    expect(found.posterior).toEqual({ mean: 1, interval: { low: 1, high: 1, level: 0.95 } });
    expect(found.nextBestLook).toEqual([]);
    const gone = third([notSeen(1, 0.9)]);
    expect(gone.steps[0]?.likelihoodRatio).toBe(0);
    expect(gone.posterior.mean).toBe(0);
    expect(gone.nextBestLook).toEqual([]);
  });
});
