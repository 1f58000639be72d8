import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import {
  covered,
  limitsOf,
  type TwoViewCounts,
  type TwoViewDesign,
  twoViewDesigns,
  twoViewStudy,
} from "./two-view-study.ts";

const n = 200;
const seed = 1;
const page = fileURLToPath(new URL("../../docs/studies/two-view.md", import.meta.url));

const percent = (count: number, of: number): string => ((100 * count) / of).toFixed(1);
const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
const rule = (count: number): string => line(Array<string>(count).fill("---"));

function row({ name, sigmaMm }: TwoViewDesign, counts: TwoViewCounts): string {
  const { lengthMm, bendDeg } = limitsOf(sigmaMm);
  return line([
    name,
    percent(counts.lengthWithin, n),
    percent(counts.bendWithin, n),
    ...covered.map((number) => percent(counts.covered[number], n)),
    `${lengthMm} mm, ${bendDeg} deg`,
    counts.medianBendErrorDeg.toFixed(1),
  ]);
}

function sides({ name }: TwoViewDesign, { out, turned, along }: TwoViewCounts): string {
  const told = ({ right, wrong }: TwoViewCounts["out"]): string[] => [
    percent(right, Math.max(1, right + wrong)),
    String(wrong),
  ];
  const withheld = along.n === 0 ? "-" : percent(along.withheld, along.n);
  return line([
    name,
    ...[out, turned].flatMap((one) => [String(one.n), percent(one.right, Math.max(1, one.n)), ...told(one)]),
    ...[String(along.n), withheld],
  ]);
}

it("writes the table of error and coverage of two views", () => {
  const results = twoViewDesigns.map((design) => [design, twoViewStudy(design, n, seed)] as const);
  const commit = execFileSync("git", ["rev-parse", "--short", "HEAD"], { encoding: "utf8" }).trim();
  const text = [
    "# Error and coverage of two views",
    "",
    `Canals of known course in space, drawn at random, each filmed straight on and with the tube 25 degrees to mesial: a point every 0.5 mm, normal noise of the stated size in u and in v, and true angles that are off the stated ones by a normal error of 1 degree. ${n} canals for each design, seeds ${seed} to ${seed + n - 1}. Commit ${commit}; ${cpus()[0]?.model ?? "unknown machine"}, Node ${process.versions.node}. Made by \`npm run study -- two-view\`; a test makes 8 new canals of each of the first four designs.`,
    "",
    '"One bend": straight 4 to 9 mm, a bend of 15 to 60 degrees to any side, with R of 5 to 15 mm and a straight end of 0 to 4 mm, or R of 2.5 to 10 mm and a straight end of 3 to 5 mm. "Apical hook": 25 to 60 degrees on R of 2 to 4 mm within the last millimetres, straight end 0 to 1 mm. "S": 30 to 50 degrees, then 15 to 28 degrees to the opposite side, R of 4 to 7 mm. "Bend to buccal or lingual": as one bend, straight out of the film, so that a straight film hides it.',
    "",
    "## Share of canals, in percent",
    "",
    '"Within" is counted against the limits in the row; "in" means that the 95 % interval holds the true value. For hooks, S-bends and bends straight across the intervals alone are promised: depth is 3.2 times as unsure as what lies along the film.',
    "",
    line([
      "design",
      "length within",
      "largest bend within",
      ...covered.map((number) => `${number} in`),
      "limits",
      "median error of the bend, deg",
    ]),
    rule(5 + covered.length),
    ...results.map(([design, counts]) => row(design, counts)),
    "",
    "## Side of the largest bend",
    "",
    "Of bends that turn at least 10 degrees out of the film's plane (as a film from mesial shows it), and of bends whose plane stands at least 10 degrees from the film's: their number, the share of all told right, the share right among those told, and how many were told wrong; withheld ones count as misses. A side is told where 80 % of what the films allow turns to it, and a quarter of it at least 10 degrees out of the film, by plane or deflection. Of bends whose plane stands under 8 degrees from the film's: their number, and the share whose side is withheld. Of an S, \"mixed\" counts as right.",
    "",
    line([
      "design",
      ...["out of plane", "plane turned"].flatMap((one) => [`${one}: n`, "right", "right of told", "wrong"]),
      ...["along the film: n", "withheld"],
    ]),
    rule(11),
    ...results.map(([design, counts]) => sides(design, counts)),
    "",
  ];
  writeFileSync(page, text.join("\n"));
  expect(results).toHaveLength(twoViewDesigns.length);
});
