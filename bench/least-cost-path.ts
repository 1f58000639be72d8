import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { courseOfPath } from "../src/core/geometry/course-of-path.ts";
import { type CostField, leastCostTree, pathTo } from "../src/core/geometry/least-cost-tree.ts";
import { type ImagePoint, px } from "../src/core/units.ts";
import { decodeFilm } from "../src/imaging/decode-film.ts";
import { ridge, ridgeCost } from "../src/imaging/ridge.ts";
import { largeFilmPng, lineAt } from "./large-film.ts";
import { type Measured, machine, measured, medianOf, tableOf } from "./timing.ts";

const film = { columns: 1_500, rows: 1_200 } as const;
const runs = 7;
const page = "docs/studies/least-cost-path.md";

type Place = readonly [column: number, row: number];
/** Along the dark line, short and long; across it; and from corner to corner, where no line helps. */
const ways: readonly (readonly [Place, Place])[] = [
  [onLine(100), onLine(400)],
  [onLine(60), onLine(1_140)],
  [
    [300, 600],
    [1_400, 620],
  ],
  [
    [0, 0],
    [1_499, 1_199],
  ],
];

function onLine(row: number): Place {
  return [Math.round(lineAt(row)), row];
}

interface ByOther {
  readonly by: string;
  readonly answers: readonly { readonly cost: number; readonly pathMs: number; readonly treeMs: number }[];
}

/** What following a line costs and takes, here and by scikit-image over the same costs in the same run; writes the page. */
export async function bench(): Promise<void> {
  const where = machine();
  const pixels = await decodeFilm(largeFilmPng(film), "large.png");
  const ridges = await timesOf("ridge picture, dark lines", () => ridge(pixels, { line: "dark" }));
  const field = { ...film, cost: Float64Array.from(ridgeCost(ridge(pixels, { line: "dark" }))) };
  const own = await ownTimes(field);
  const other = byScikitImage(field);
  const all = [ridges, ...own.times];
  const text = pageOf({ where, all, own, other });
  writeFileSync(page, text);
  console.log(`${text}\nWritten to ${page}`);
}

/** Processor time: what else runs on the machine hardly counts. */
const timesOf = (name: string, work: () => unknown): Promise<Measured> =>
  measured(name, "ms", runs, async () => {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  });

interface Own {
  readonly times: readonly Measured[];
  readonly trees: readonly Measured[];
  /** Stopped at the end of the way, as `canalog compute trace` does. */
  readonly paths: readonly Measured[];
  readonly costs: readonly number[];
}

async function ownTimes(field: CostField): Promise<Own> {
  const [trees, paths]: [Measured[], Measured[]] = [[], []];
  const costs: number[] = [];
  for (const [from, to] of ways) {
    trees.push(await timesOf(`whole tree from ${from}`, () => leastCostTree(field, indexOf(from))));
    const way = () => leastCostTree(field, indexOf(from), undefined, indexOf(to));
    paths.push(await timesOf(`one way from ${from}`, way));
    costs.push(way().costTo[indexOf(to)] ?? Number.NaN);
  }
  const [from, to] = ways[1] ?? [onLine(60), onLine(1_140)];
  const near = { column: from[0] - 420, row: 0, columns: 841, rows: from[1] + 421 };
  const tree = leastCostTree(field, indexOf(from));
  const times = [
    await timesOf("tree within 420 px of a start", () => leastCostTree(field, indexOf(from), near)),
    await timesOf("tree over the whole film", () => leastCostTree(field, indexOf(from))),
    await timesOf("course to a pointer at the far end", () =>
      courseOfPath(pointsOf(tree, to), placeOf(from), placeOf(to)),
    ),
  ];
  return { times, trees, paths, costs };
}

const pointsOf = (tree: ReturnType<typeof leastCostTree>, to: Place): ImagePoint[] =>
  pathTo(tree, indexOf(to)).map((index) => placeOf([index % film.columns, Math.floor(index / film.columns)]));
const indexOf = ([column, row]: Place): number => row * film.columns + column;
const placeOf = ([column, row]: Place): ImagePoint => ({ column: px(column), row: px(row) });

/** The answers of scikit-image, where Debian's is there. */
function byScikitImage({ cost, columns, rows }: CostField): ByOther | undefined {
  if (!existsSync("/usr/lib/python3/dist-packages/skimage")) return undefined;
  const folder = mkdtempSync(join(tmpdir(), "canalog-costs-"));
  try {
    const file = join(folder, "costs.f64");
    writeFileSync(file, new Uint8Array(cost.buffer));
    const args = ["bench/least-cost-path.py", file, String(columns), String(rows), String(runs)];
    return JSON.parse(execFileSync("/usr/bin/python3", args, { input: JSON.stringify(ways), encoding: "utf8" }));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function pageOf(found: { where: string; all: readonly Measured[]; own: Own; other: ByOther | undefined }): string {
  const { where, all, own, other } = found;
  const commit = execFileSync("git", ["rev-parse", "--short", "HEAD"], { encoding: "utf8" }).trim();
  const lines = [
    "# Least-cost paths: cost and time beside scikit-image",
    "",
    `A film of ${film.columns} by ${film.rows} pixels with a dark line and grain, its costs as \`trace\` makes them (docs/methods/trace, C1), in float64. Times are processor time, medians of ${runs} runs, one after the other, in one run of \`npm run bench -- least-cost-path\`. Commit ${commit}; ${where}.`,
    "",
    "## The same costs, the same ways",
    "",
    ...(other === undefined ? ["scikit-image (Debian's python3-skimage) was not there."] : besides(own, other)),
    "",
    "## What a person waits for",
    "",
    "```",
    tableOf(all),
    "```",
    "",
    "Wanted: the ridge picture within 1,000 ms at opening, a new start within 300 ms, a move of the pointer within 16 ms. The light box grows the near tree first; the pointer's own frame, with drawing, is timed in a browser by `npm run bench`.",
    "",
  ];
  return lines.join("\n");
}

function besides(own: Own, { by, answers }: ByOther): string[] {
  const rows = ways.map(([from, to], at) => {
    const answer = answers[at] ?? { cost: Number.NaN, pathMs: Number.NaN, treeMs: Number.NaN };
    const cost = own.costs[at] ?? Number.NaN;
    const [path, tree] = [own.paths[at], own.trees[at]].map((one) => medianOf(one?.values ?? []));
    const ratio = (mine = Number.NaN, its = Number.NaN) =>
      `${mine.toFixed(0)} / ${its.toFixed(0)} = ${(mine / its).toFixed(2)}`;
    return [
      `${from} to ${to}`,
      ...[cost.toFixed(6), answer.cost.toFixed(6), Math.abs(cost - answer.cost).toExponential(1)],
      ...[ratio(path, answer.pathMs), ratio(tree, answer.treeMs)],
    ];
  });
  const head = ["way", "cost", `cost by ${by}`, "apart", "one way, ms: ours / its", "whole tree, ms: ours / its"];
  return [
    `\`route_through_array\` (fully connected, geometric) and \`MCP_Geometric.find_costs\` of ${by}.`,
    "",
    ...[head, Array<string>(6).fill("---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`),
    "",
    "The light box grows whole trees, because every later place of the pointer then costs nothing; `canalog compute trace` stops at the end of each way.",
  ];
}
