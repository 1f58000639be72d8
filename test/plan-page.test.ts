import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { planSources } from "../src/core/diagnosis/plan/plan-sources.ts";
import { conflictRows, fitRows, mustRows, riskRows, wayRows } from "../src/core/diagnosis/plan/plan-tables.ts";

const lines = readFileSync(new URL("../docs/methods/plan.md", import.meta.url), "utf8").split("\n");
const heard = (...texts: readonly string[]) => lines.some((line) => texts.every((text) => line.includes(text)));
const percent = (share: number) => `${Math.round(share * 1000) / 10} %`;

const rows: [string, readonly string[]][] = [
  ...fitRows.map(({ id, way, speaks, says, source }): [string, string[]] => [
    id,
    [`\`${id}\``, way, speaks, says, source],
  ]),
  ...mustRows.map(({ id, says, note = "", waits, source }): [string, string[]] => [
    id,
    [`\`${id}\``, says, note, waits, source],
  ]),
  ...riskRows.map(({ id, says, plain, source }): [string, string[]] => [id, [`\`${id}\``, says, plain, source]]),
  ...conflictRows.map(({ says, sources }): [string, string[]] => [sources.join(), [says, ...sources]]),
  ...wayRows.map(({ way, steps, visits }): [string, string[]] => [
    way,
    [`| ${way} |`, ...steps, visits.usual, visits.why],
  ]),
  ...planSources.flatMap(({ id: source, verification, outcomes, factors }) => [
    ...outcomes.map(({ id, group, events, n, proportion, mark = verification, followUp }): [string, string[]] => [
      id,
      [
        ...[`\`${id}\``, group, followUp, `\`${source}\` | ${mark}`],
        ...(events === undefined ? [] : [`${events}/${n}`]),
        percent(proportion ?? (events ?? 0) / (n ?? 1)),
      ],
    ]),
    ...factors.map(({ id, says, ratio, mark = verification }): [string, string[]] => [
      id,
      [`\`${id}\``, says, `\`${source}\` | ${mark}`, ...(ratio === undefined ? ["none printed"] : [`ratio ${ratio}`])],
    ]),
  ]),
  ...planSources.map(({ id, reference, verification }): [string, string[]] => [
    id,
    [`- \`${id}\` (${verification}): ${reference}`],
  ]),
];

it.each(rows)("the page of the plan shows the row %s as the data hold it", (_, texts) => {
  expect(heard(...texts)).toBe(true);
});

it("the page of the plan shows no row that the data do not hold", () => {
  const shown = lines.flatMap((line) => /^\| `([a-z0-9-]+)` \|/.exec(line)?.[1] ?? []);
  const held = new Set(rows.map(([id]) => id));
  expect(shown.length).toBeGreaterThan(150);
  expect(shown.filter((id) => !held.has(id))).toEqual([]);
});
