import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { codeRows } from "../src/core/diagnosis/terms/codes-of.ts";
import { factWords, type Row, rows } from "../src/core/diagnosis/terms/rules.ts";
import { vignettes } from "./diagnosis-vignettes.ts";

const page = readFileSync(fileURLToPath(new URL("../docs/methods/diagnosis.md", import.meta.url)), "utf8");

const prefix = { yes: "", no: "no: ", unknown: "not known: ", notYes: "not shown: ", notNo: "not denied: " } as const;
const looksAt = (when: Row["when"]): string =>
  Object.entries(when)
    .map(([name, wanted]) => `${prefix[wanted]}${factWords[name]?.means ?? name}`)
    .join("; ");
const leaves = ({ open }: Row): string =>
  open.map(({ term, separatedBy }) => `; leaves open ${term} (${separatedBy})`).join("");

/** What a row says, as the page writes it. */
function saysOf(row: Row): string {
  const needs = row.settledBy.map((name) => factWords[name]?.means ?? name).join("; ");
  const settled = needs === "" ? "" : `; only possible until known: ${needs}`;
  if (row.kind === "term") return `**${row.term}**, ${row.status}${settled}${leaves(row)}. ${row.says}`;
  if (row.kind === "speaks") {
    const sides = (["for", "against"] as const).filter((side) => row[side].length > 0);
    return `${sides.map((side) => `${side} ${row[side].join(", ")}`).join("; ")}. ${row.says}`;
  }
  if (row.kind === "open") return `leaves open ${row.term} (${row.separatedBy}). ${row.says}`;
  if (row.kind === "also") return `**${row.term}** beside the first term. ${row.says}`;
  if (row.kind === "source") return `**${row.origin}**. ${row.says}`;
  return row.says;
}

const sourceOf = ({ source, mark }: Row): string => (source === mark ? mark : `\`${source}\`, ${mark}`);

/** The table of one part of the page. */
const tableOf = (axis: string): string[] =>
  rows
    .filter((row) => row.axis === axis)
    .map((row) => `| ${row.id} | ${looksAt(row.when)} | ${saysOf(row)} | ${sourceOf(row)} |`);

const linesFrom = (heading: string): string[] => {
  const [, after = ""] = page.split(`## ${heading}\n`);
  const [section = ""] = after.split("\n## ");
  return section.split("\n").filter((line) => line.startsWith("| ") && !/^\| (row|---|case|term)/.test(line));
};

describe("the page of the diagnosis shows what is computed", () => {
  it.each([
    ["Source and urgency", ["urgent", "source"]],
    ["The pulpal axis", ["pulpal"]],
    ["The apical axis", ["apical"]],
    ["Contradictions", ["contradiction"]],
    ["What it asks for, and cautions", ["asks"]],
  ])("%s: every row of the table, in its order", (heading, axes) => {
    expect(linesFrom(heading)).toEqual(axes.flatMap(tableOf));
  });

  it("every row of the crosswalk", () => {
    const lines = codeRows.map(
      ({ term, when, icd10, icd11, icd10Cm }) => `| ${term} | ${looksAt(when)} | ${icd10} | ${icd11} | ${icd10Cm} |`,
    );
    expect(linesFrom("Codes")).toEqual(lines);
  });

  it("every published case, with its answer and ours", () => {
    const lines = vignettes.map(({ name, source, mark, inferred, printed, ours, because = "" }) => {
      const note =
        inferred === undefined ? mark : `${mark}; ${inferred === "both" ? "answer" : `${inferred} term`} inferred`;
      const [pulpal, pulpalStatus, apical, apicalStatus] = ours;
      const status = (term: string, how: string) => (term === how ? term : `${term}, ${how}`);
      return `| ${name} | ${source} (${note}) | ${printed.join(" / ")} | ${status(pulpal, pulpalStatus)} / ${status(apical, apicalStatus)} | ${because} |`;
    });
    expect(linesFrom("Published cases")).toEqual(lines);
  });
});
