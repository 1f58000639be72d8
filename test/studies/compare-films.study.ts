import { execFileSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { type RecallResult, recallPairs, recallStudy, tubeChanges } from "./compare-films-study.ts";

const page = fileURLToPath(new URL("../../docs/studies/compare-films.md", import.meta.url));

const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;

function row(name: string, { change, found, trueRatio }: RecallResult): string {
  const { areaRatio, intervals } = found;
  const interval = intervals.areaRatio;
  return line([
    name,
    `${change.horizontalDeg}`,
    `${change.verticalDeg}`,
    (found.residualMm ?? 0).toFixed(3),
    (0.0383 * (found.residualNearLesionPx ?? 0)).toFixed(3),
    found.stretch.toFixed(3),
    found.comparable ? "yes" : "no",
    areaRatio === undefined ? "-" : areaRatio.toFixed(3),
    interval === undefined ? "-" : `${interval.low.toFixed(2)}-${interval.high.toFixed(2)}`,
    trueRatio.toFixed(3),
    areaRatio === undefined ? "-" : (100 * (areaRatio / trueRatio - 1)).toFixed(1),
  ]);
}

it("writes the table of films taken again from elsewhere", () => {
  const results = recallPairs.map((pair) => [pair.name, recallStudy(pair, tubeChanges, 1)] as const);
  const commit = execFileSync("git", ["rev-parse", "--short", "HEAD"], { encoding: "utf8" }).trim();
  const heads = ["pair", "horizontal, deg", "vertical, deg", "residual, mm", "near the lesion, mm", "stretch"];
  const more = ["comparable", "area ratio", "95 %", "true", "off, %"];
  const text = [
    "# Films taken again from elsewhere",
    "",
    `The phantom's films at 0.04 mm a pixel, the second with the tube moved by the angle named, with 5,000 quanta a pixel for 9,000, other black and white points and another gamma; four landmarks or more at different depths, clicked with 1.5 px in each direction on both films; lesions outlined by their true shadows. Seeds 1, 7 to 13 and 100 to 106. Commit ${commit}; ${cpus()[0]?.model.trim() ?? "unknown machine"}, Node ${process.versions.node}. Made by \`npm run study -- compare-films\`; a test makes some again at a third of the size.`,
    "",
    line([...heads, ...more]),
    line(Array<string>(heads.length + more.length).fill("---")),
    ...results.flatMap(([name, list]) => list.map((one) => row(name, one))),
    "",
    "A lesion is 2.2 times as deep as it is wide here: its shadow grows with the angle whatever the transform does.",
    "",
  ];
  mkdirSync(fileURLToPath(new URL("../../docs/studies/", import.meta.url)), { recursive: true });
  writeFileSync(page, text.join("\n"));
  expect(results).toHaveLength(recallPairs.length);
});
