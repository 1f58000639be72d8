import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import { assumedOf, assumptionNames, middleOf } from "./fracture-assumed.ts";
import type { OfEach } from "./fracture-input.ts";
import { fractureTopic } from "./fracture-topic.ts";

const page = readFileSync(fileURLToPath(new URL("../../../docs/methods/fracture.md", import.meta.url)), "utf8");
const example = answer(fractureTopic, JSON.parse(/```json input\n([\s\S]*?)```/.exec(page)?.[1] ?? ""));
const written = ({ bendingFatigue, torsionalOverload, flawOrJoint }: OfEach): string =>
  [bendingFatigue, torsionalOverload, flawOrJoint].map((chance) => chance.toFixed(2)).join(" / ");

describe("the page of the method", () => {
  it("says how the example moves as it does move", () => {
    expect(page).toContain(`at the middle ${written(example.atMiddle)})`);
    for (const { assumption, halved, doubled } of example.sensitivity)
      expect(page).toContain(`| \`${assumption}\` | ${written(halved)} | ${written(doubled)} |`);
    for (const { posterior, n, N } of example.priors) expect(page).toContain(`${written(posterior)} (${n} of ${N})`);
  });

  it("names every assumption with its range and middle", () => {
    const ranges = assumedOf({});
    const short = (value: number): string => String(Number(value.toPrecision(3)));
    for (const name of assumptionNames) {
      const row =
        page.split("\n").find((line) => line.startsWith(`| \`${name}\``) && line.split("|").length === 6) ?? "";
      const [, , range = "", middle = ""] = row.split("|").map((cell) => cell.trim());
      const { low, high } = ranges(name);
      expect(range.split(" to ").map(Number)).toEqual(low === high ? [low] : [Number(short(low)), Number(short(high))]);
      expect(middle).toBe(short(middleOf(ranges)(name)));
    }
  });
});
