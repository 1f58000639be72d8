import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { refusalCodes } from "../src/core/refusal.ts";
import { refusalOutcome } from "../src/core/refusal-outcome.ts";

const page = readFileSync(new URL("../docs/refusals.md", import.meta.url), "utf8");
const rows = page
  .split("\n")
  .filter((line) => line.startsWith("| `"))
  .map((line) =>
    line
      .split("|")
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );

it("describes every code of the closed list once, in its order, and no other", () => {
  expect(rows.map(([code]) => code)).toEqual(refusalCodes.map((code) => `\`${code}\``));
});

it("says of each code what it means and what to do", () => {
  for (const row of rows) {
    expect(row).toHaveLength(5);
    expect(row[1]).toMatch(/^[A-Z].*\.$/);
    expect(row[2]).toMatch(/^[A-Z`].*\.$/);
  }
});

it("gives the exit code and HTTP status of the table", () => {
  const shown = Object.fromEntries(rows.map(([code, , , exit, status]) => [code, [Number(exit), Number(status)]]));
  const held = refusalCodes.map((code) => [
    `\`${code}\``,
    [refusalOutcome[code].exitCode, refusalOutcome[code].httpStatus],
  ]);
  expect(shown).toEqual(Object.fromEntries(held));
});
