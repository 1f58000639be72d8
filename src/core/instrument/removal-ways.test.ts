import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import { removalChances } from "./removal/removal-chance.ts";
import { wayInputs } from "./removal/way-inputs.ts";
import { healedBy, healingWays } from "./removal/way-outcomes.ts";
import { removalTopic } from "./removal-topic.ts";

const of = (more: object = {}) => answer(removalTopic, { fragment: {}, ...more });
const wayOf = (name: string, more: object = {}) => {
  const found = of(more).ways.find(({ way }) => way === name);
  if (found === undefined) throw new Error(`no way ${name}`);
  return found;
};
/** Mean of a beta distribution with the prior of Jeffreys. */
const beta = (events: number, n: number) => (events + 0.5) / (n + 1);
const mean = (shares: readonly number[]) => shares.reduce((sum, one) => sum + one, 0) / shares.length;

// Spili 2005 (seen): 134 of 146 with a fragment, 138 of 146 without.
const [left, free] = [beta(134, 146), beta(138, 146)];

describe("healing by way", () => {
  it("with the fragment left is that of the matched series (C10)", () => {
    expect(wayOf("leave").healed?.mean).toBeCloseTo(left, 12);
  });

  // The counts that print as 86.7 %: 13 of 15 up to 78 of 90; the others of 134 of 146 had no lesion.
  it("with the fragment left is that of each count that the printed share by lesion allows (C10)", () => {
    const sizes = [15, 30, 45, 60, 75, 83, 90];
    const inside = sizes.map((n) => beta(Math.round(0.867 * n), n));
    const outside = sizes.map((n) => beta(134 - Math.round(0.867 * n), 146 - n));
    expect(wayOf("leave", { lesion: "present" }).healed?.mean).toBeCloseTo(mean(inside), 12);
    expect(wayOf("leave", { lesion: "absent" }).healed?.mean).toBeCloseTo(mean(outside), 12);
  });

  // Bypass alone was counted in hidden fragments: 21 of 44; what it is worth is anything from 0 to 1.
  it("by bypassing lies between that with and that without a fragment (C12)", () => {
    expect(wayOf("bypass").healed?.mean).toBeCloseTo(left + beta(21, 44) * 0.5 * (free - left), 12);
  });

  // Mixtures by hand: five series; of those that count both, any share of the successes may be bypasses.
  it("by removal is the closed form of its parts (C8, C9, C12)", () => {
    const both = 1 - 0.5 * (1 - 0.5);
    const gain = mean([
      ...[beta(77, 112) * both, beta(84, 97), beta(162, 170), beta(79, 112) * both, beta(38, 72) * both],
    ]);
    const perforates = mean([beta(55, 1133), beta(1, 170)]);
    const sealed = mean([beta(18, 21), beta(115, 124)]);
    const known = (1 - perforates) * (left + gain * (free - left)) + perforates * sealed * left;
    expect(wayOf("remove").healed?.mean).toBeCloseTo(known, 12);
    const { perforation } = of();
    expect(perforation.chance.mean).toBeCloseTo(perforates, 12);
    expect(perforation.healed.mean).toBeCloseTo(sealed, 12);
  });

  // A hidden head: the one series that counted it gives 21 of 44 by bypass alone.
  it("by removal takes a group's own successes, bypasses as such (C8)", () => {
    const both = 0.75;
    const series = [beta(77, 112) * both, beta(84, 97), beta(162, 170), beta(21, 44) * 0.5, beta(38, 72) * both];
    const perforates = mean([beta(55, 1133), beta(1, 170)]);
    const known = (1 - perforates) * (left + mean(series) * (free - left));
    const whole = known + perforates * mean([beta(18, 21), beta(115, 124)]) * left;
    expect(wayOf("remove", { headSeen: "hidden" }).healed?.mean).toBeCloseTo(whole, 12);
  });

  it("by surgery is that of its three counted series (C11)", () => {
    const known = mean([beta(99, 134), beta(Math.round(0.784 * 839), 839), beta(Math.round(0.913 * 453), 453)]);
    expect(wayOf("surgery").healed?.mean).toBeCloseTo(known, 12);
  });

  it("is none after extraction, which keeps no tooth (C11)", () => {
    const gone = wayOf("extraction");
    expect(gone).not.toHaveProperty("healed");
    expect(gone.kept).toEqual({ mean: 0, interval: { low: 0, high: 0, level: 0.95 } });
    expect(gone.from.every(({ inSum, note }) => !inSum && note?.includes("not of the tooth"))).toBe(true);
  });

  it("has a mean that the draws keep to, way by way (C12)", () => {
    const input = { fragment: {}, draws: 40_000, seed: 3, lesion: "present" as const };
    const inputs = wayInputs(input, removalChances(new Map([["headSeen", "seen"]])));
    for (const way of healingWays) {
      const drawn = inputs.draws.map(healedBy[way]);
      const middle = mean(drawn);
      const sd = Math.sqrt(mean(drawn.map((one) => (one - middle) ** 2)));
      // Within 5 standard errors.
      expect(Math.abs(middle - healedBy[way](inputs.means))).toBeLessThan((5 * sd) / Math.sqrt(40_000));
    }
  });

  it("lies between none and all, its mean within its interval, whatever is known (C12)", () => {
    const facts = fc.record({
      lesion: fc.constantFrom("present", "absent", undefined),
      headSeen: fc.constantFrom("seen", "hidden", "notLooked", undefined),
      third: fc.constantFrom("coronal", "middle", "apical", undefined),
      bend: fc.constantFrom("before", "in", "beyond", "none", undefined),
      toothType: fc.constantFrom("anterior", "premolar", "molar", undefined),
    });
    fc.assert(
      fc.property(facts, (more) => {
        const { ways } = of({ ...more, draws: 300 });
        const shares = new Map(ways.map(({ way, healed }) => [way, healed?.mean ?? 0]));
        for (const { healed, kept } of ways)
          for (const one of [healed, kept].flatMap((each) => each ?? [])) {
            expect(one.interval.low).toBeLessThanOrEqual(one.mean);
            expect(one.interval.high).toBeGreaterThanOrEqual(one.mean);
            expect(one.interval.low).toBeGreaterThanOrEqual(0);
            expect(one.interval.high).toBeLessThanOrEqual(1);
          }
        // A bypass is worth nothing to all of what lies between a canal with and one without a fragment.
        expect(shares.get("bypass")).toBeGreaterThan(shares.get("leave") ?? 1);
      }),
      { numRuns: 20 },
    );
  });

  it("is the same for the same seed, and near it for another; the means don't move (C12)", () => {
    expect(of({ seed: 4 })).toEqual(of({ seed: 4 }));
    const [one, other] = [wayOf("remove"), wayOf("remove", { seed: 9, draws: 8_000 })];
    expect(other.healed?.mean).toBe(one.healed?.mean);
    expect(other.healed?.interval.low).not.toBe(one.healed?.interval.low);
    expect(other.healed?.interval.low).toBeCloseTo(one.healed?.interval.low ?? 0, 1);
  });
});

describe("teeth kept", () => {
  it("are those of root canal treatments as a whole, and by surgery those not known to be out (C11)", () => {
    const known = mean([beta(Math.round(0.954 * 759), 759), beta(Math.round(0.953 * 858), 858)]);
    for (const way of ["remove", "bypass", "leave"]) expect(wayOf(way).kept?.mean).toBeCloseTo(known, 12);
    expect(wayOf("surgery").kept?.mean).toBeCloseTo(beta(261 - 31, 261), 12);
    expect(of().notComputed.map(({ name }) => name)).toContain("kept by way");
  });
});

describe("the figures of each way", () => {
  it("have a count where the sum draws from them, and say where it follows from a share (C10, C11)", () => {
    for (const { way, from } of of({ lesion: "present" }).ways) {
      expect(from.length).toBeGreaterThan(0);
      for (const { inSum, events, n, share, note } of from) {
        expect(share).toBeGreaterThan(0);
        if (inSum && n === undefined) expect(note).toContain("denominators are not printed");
        if (inSum && n !== undefined) expect(events).toBeLessThanOrEqual(n);
        if (way === "extraction") expect(inSum).toBe(false);
      }
    }
  });

  it("stand with and without a lesion, the review's beside (C10)", () => {
    const shares = wayOf("leave").from.map(({ source, share }) => [source, Number(share.toFixed(3))]);
    expect(shares).toContainEqual(["panitvisai-2010", 0.807]);
    expect(shares).toContainEqual(["panitvisai-2010", 0.924]);
    expect(shares).toContainEqual(["spili-2005", 0.867]);
    expect(shares).toContainEqual(["spili-2005", 0.918]);
  });
});

describe("whether the figures decide", () => {
  it("is no where the intervals of healing overlap, and then it says which (C14)", () => {
    const found = of();
    expect(found.figuresDecide).toBe(false);
    expect(found.figuresSay).toContain("remove and leave");
    const low = (name: string) => wayOf(name).healed?.interval;
    expect(low("remove")?.low ?? 1).toBeLessThan(low("leave")?.high ?? 0);
  });

  it("never calls a way the best one (C14)", () => {
    const said = JSON.stringify(of({ lesion: "present", headSeen: "seen", third: "coronal" }));
    expect(said.replaceAll("No way is called the best", "")).not.toMatch(/\bbest\b|\bbetter way\b|recommend(?!ed)/i);
  });
});

describe("what drives the differences", () => {
  it("are the inputs, each moved over its own interval, the widest first (C13)", () => {
    const { drivers } = of({ lesion: "present", headSeen: "seen" });
    expect(drivers.map(({ way, inputs }) => [way, inputs.length])).toEqual([
      ...[["remove", 7] as const, ["bypass", 4] as const, ["surgery", 2] as const],
    ]);
    for (const { inputs, difference } of drivers) {
      const widths = inputs.map(({ differenceAtLow, differenceAtHigh }) =>
        Math.abs(differenceAtHigh - differenceAtLow),
      );
      expect(widths).toEqual(widths.toSorted((a, b) => b - a));
      // Each difference is linear in each input: the mean lies between its ends.
      for (const { low, high, differenceAtLow, differenceAtHigh } of inputs) {
        expect(low).toBeLessThan(high);
        expect(difference.mean).toBeGreaterThan(Math.min(differenceAtLow, differenceAtHigh) - 1e-12);
        expect(difference.mean).toBeLessThan(Math.max(differenceAtLow, differenceAtHigh) + 1e-12);
      }
    }
  });

  // Surgery less leaving: with surgery at its upper end the difference is that end less the mean of leaving.
  it("move the difference by what the way is made of (C13)", () => {
    const surgery = of().drivers.find(({ way }) => way === "surgery");
    const moved = surgery?.inputs.find(({ name }) => name === "Healed after surgery");
    expect(moved?.differenceAtHigh).toBeCloseTo((moved?.high ?? 0) - left, 12);
    const bypass = of().drivers.find(({ way }) => way === "bypass");
    const worth = bypass?.inputs.find(({ name }) => name.startsWith("What a bypass is worth"));
    expect(worth?.differenceAtLow).toBeCloseTo(beta(21, 44) * (worth?.low ?? 0) * (free - left), 12);
  });

  it("of the attempt scale what it reaches (C13)", () => {
    const remove = of().drivers.find(({ way }) => way === "remove");
    const at = (name: string) => remove?.inputs.find((one) => one.name.startsWith(name));
    const success = at("The fragment is removed");
    // With no success at all only the perforation would be left of the difference.
    const perforates = mean([beta(55, 1133), beta(1, 170)]);
    const none = perforates * (mean([beta(18, 21), beta(115, 124)]) * left - left);
    const slope = ((remove?.difference.mean ?? 0) - none) / mean([77 / 112, 84 / 97, 162 / 170, 79 / 112, 38 / 72]);
    const measured =
      ((success?.differenceAtHigh ?? 0) - (success?.differenceAtLow ?? 0)) /
      ((success?.high ?? 0) - (success?.low ?? 0));
    expect(measured).toBeCloseTo(slope, 3);
    expect(at("Successes that are a bypass")?.differenceAtHigh).toBeLessThan(at("Successes")?.differenceAtLow ?? 0);
  });
});
