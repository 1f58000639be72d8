import { describe, expect, it } from "vitest";
import stepFile from "../../../data/emergency-steps/steps.json" with { type: "json" };
import { emergencyNames } from "../clinic-rules.ts";
import { guideSources } from "../mishap-guide/guide-sources.ts";
import { mishapGuide } from "../mishap-guide/mishap-guide.ts";
import { emergencyGuide, sourcesOfEmergency } from "./emergency-guide.ts";
import { emergencySources } from "./emergency-sources.ts";

const guides = emergencyNames.map((name) => [name, emergencyGuide(name)] as const);
const linesOf = ([, { call, signs, steps, not, differ, cautions }]: (typeof guides)[number]) => [
  ...[call, ...signs, ...steps],
  ...[...not, ...differ, ...cautions],
];
const lines = guides.flatMap(linesOf);

describe("the guide of an emergency", () => {
  it.each(guides)("of %s begins with stopping, has somebody called and somebody told or sent", (_, guide) => {
    expect(guide.steps[0]?.says).toMatch(/^Stop/);
    expect(guide.call.says).toMatch(/emergency service/);
    expect(guide.steps.some(({ says }) => /hospital|surgery today/.test(says))).toBe(true);
    expect(guide.steps.length).toBeLessThanOrEqual(9);
  });

  it("names sources that are there, or common practice; no source is there for nothing", () => {
    const known = ["common practice", ...[...emergencySources, ...guideSources].map(({ id }) => id)];
    for (const { source } of lines) expect(known).toContain(source);
    for (const { id } of emergencySources) expect(lines.map(({ source }) => source)).toContain(id);
    const listed = guides.flatMap(([, guide]) => sourcesOfEmergency(guide).map(({ id }) => id));
    for (const { source } of lines.filter((line) => line.source !== "common practice"))
      expect(listed).toContain(source);
  });

  it("prints no dose whose source was not read", () => {
    const doses = lines.filter(({ says }) => /\d ?(ml|mg|micrograms|litres)\b/.test(says));
    expect(doses.length).toBeGreaterThan(5);
    expect(doses.map(({ says, mark }) => [says, mark]).filter(([, mark]) => mark !== "seen")).toEqual([]);
  });

  // Resuscitation Council UK 2021, as three pages print it: 500, 300 and 150 micrograms of 1 mg/ml.
  it("writes adrenaline as volume and mass that agree", () => {
    const { says } = emergencyGuide("allergy").steps.find((step) => step.says.startsWith("Adrenaline")) ?? { says: "" };
    const pairs = [...says.matchAll(/(\d+)(?: micrograms)? = ([\d.]+) ml/g)];
    expect(pairs.map(([, micrograms, ml]) => [Number(micrograms), Number(ml)])).toEqual([
      [500, 0.5],
      [300, 0.3],
      [150, 0.15],
    ]);
    for (const [, micrograms, ml] of pairs) expect(Number(micrograms) / 1000).toBe(Number(ml));
  });

  // NHS Lothian: 1.5 ml/kg, about 100 ml at 70 kg; the sum must agree within the page's own "about".
  it("writes the emulsion's first dose as the page that was read does", () => {
    const says = emergencyGuide("anaestheticOverdose")
      .steps.map((step) => step.says)
      .join(" ");
    const [, perKg, whole, mass] = /([\d.]+) ml\/kg over 1 minute \(about (\d+) ml at (\d+) kg\)/.exec(says) ?? [];
    expect([perKg, whole, mass].map(Number)).toEqual([1.5, 100, 70]);
    expect(Math.abs((Number(perKg) * Number(mass)) / Number(whole) - 1)).toBeLessThan(0.06);
  });

  it("has a step of a mishap in the mishap's own words", () => {
    for (const [name, kind] of [
      ["hypochlorite", "irrigantExtrusion"],
      ["swallowedOrInhaled", "swallowedOrInhaled"],
    ] as const) {
      const written = stepFile.emergencies[name].steps.filter((step) => "step" in step);
      const own = mishapGuide(kind).steps.map(({ says }) => says);
      const shared = emergencyGuide(name).steps.filter(({ says }) => own.includes(says));
      expect(shared).toHaveLength(written.length);
      expect(shared.length).toBeGreaterThan(5);
    }
  });

  it("sets sources that differ beside each other, from more than one", () => {
    for (const [, { differ }] of guides.filter(([, guide]) => guide.differ.length > 0))
      expect(new Set(differ.map(({ source }) => source)).size).toBeGreaterThan(1);
  });

  it("promises nothing, and speaks in sentences that are read at a glance", () => {
    for (const { says } of lines) expect(says).not.toMatch(/\bsafe|\bprove|\bguarantee/i);
    for (const [, { steps }] of guides) for (const { says } of steps) expect(says.length).toBeLessThan(190);
  });
});
