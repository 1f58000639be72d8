import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { bins, type FractureCounts, fractureDesigns, fractureStudy } from "./fracture-study.ts";

const n = 200;
const seed = 1;
const page = fileURLToPath(new URL("../../docs/studies/fracture.md", import.meta.url));

const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
const rule = (count: number): string => line(Array<string>(count).fill("---"));

const row = (name: string, { n: told, right, logScore, priorLogScore }: FractureCounts): string =>
  line([name, String(told), ((100 * right) / told).toFixed(1), logScore.toFixed(3), priorLogScore.toFixed(3)]);

const binNames = bins.slice(1).map((high, index) => {
  const low = Math.round(100 * (bins[index] ?? 0));
  return index === 0 ? `below ${Math.round(100 * high)} %` : `${low} to ${Math.round(100 * Math.min(1, high))} %`;
});

/** Counts of a bin over all designs. */
function pooled(results: readonly FractureCounts[], bin: number) {
  const of = results.flatMap(({ calibration }) => calibration[bin] ?? []);
  return { n: of.reduce((sum, one) => sum + one.n, 0), right: of.reduce((sum, one) => sum + one.right, 0) };
}

it("studies the explanation of breaks", () => {
  const results = fractureDesigns.map(({ name, making }) => [name, fractureStudy({ name, making }, n, seed)] as const);
  const counts = results.map(([, one]) => one);
  const commit = execFileSync("git", ["rev-parse", "--short", "HEAD"]).toString().trim();
  const text = [
    "# How often the explanation of a break is right",
    "",
    `Breaks of a known cause, made by other models than the one that explains them: ${n} for each design, seeds ${seed} to ${seed + n - 1}. Commit ${commit}; ${cpus()[0]?.model ?? "unknown machine"}, Node ${process.versions.node}. Made by \`npm run study -- fracture\`; a test makes 12 new breaks of the first two designs.`,
    "",
    "Instruments of sizes 20 to 35, tapers .02 to .08, one to three uses in canals of one arc (R 3 to 12 mm, 15 to 60 degrees). The cause is drawn first: a flaw in 6 of 100, else torsion or fatigue by one of the three published series. A fatigue break lies where wear times a local weakness (each half millimetre strong as it happens to be, 30 %) is most: wear by an exponent of 1.5 to 3, in canals 0 to 0.15 mm wider, cut by a smooth rise and fall of the curvature, with true turns of 0.3 to 1 of the told ones. A torsional break lies above a bound length (log-normal about 2 mm, a share elsewhere); a flaw anywhere, every second one high. A fifth of all breaks are mixed: their place lies between both, up to half way. Told are the course with its errors (R 15 %, turn 4 degrees, beginning 0.4 mm; depth 0.4 mm), one measure of the piece, and signs and handling as far as they happen to be known, by shares of their own.",
    "",
    "The study shares with the model the published shares of causes and the kind of facts; it can't show that the published series hold for a given practice.",
    "",
    "## Right, and how sure",
    "",
    "`Right`: the likeliest explanation is the cause. `Log score`: mean natural logarithm of the chance given to the cause; nearer to 0 is better; beside it that of the prior alone.",
    "",
    line(["design", "breaks", "right, %", "log score", "of the prior"]),
    rule(5),
    ...results.map(([name, one]) => row(name, one)),
    "",
    "## Whether a chance means what it says",
    "",
    "All designs together, by the chance that the likeliest explanation was given: how many breaks, and in how many it was the cause. Designs have their causes and canals in common, so that these counts are fewer breaks than they seem.",
    "",
    line(["chance given", "breaks", "right", "right, %"]),
    rule(4),
    ...binNames.map((name, bin) => {
      const { n: told, right } = pooled(counts, bin);
      return line([name, String(told), String(right), ((100 * right) / Math.max(1, told)).toFixed(1)]);
    }),
    "",
  ];
  writeFileSync(page, text.join("\n"));
  expect(results).toHaveLength(fractureDesigns.length);
});
