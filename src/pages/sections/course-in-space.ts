import { bendShown } from "../../figures/bend-shown.ts";
import { courseInSpace } from "../../figures/course-in-space.ts";
import type { Pose } from "../../figures/seen-from.ts";
import type { Figure } from "../../figures/svg-tree.ts";
import { type CourseRead, courseRead, isTooNear, referenceOf, viewsOf } from "../../ledger/course-in-space.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import { partsOf, thePart } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import { ledgerReader } from "../ledger-reader.ts";
import { type Block, type Line, type Page, says } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import { type FilmOfSpace, filmsOfSpace, standsAs } from "./films-of-space.ts";

type InSpace = CourseRead & { readonly hiddenDeg: number };

/** A canal that films under different angles gave in space, with what the pages say of it. */
interface CanalTold {
  readonly entry: LedgerEntry;
  readonly canal: string;
  readonly films: readonly FilmOfSpace[];
  readonly told: InSpace;
}

/** Aslant and from mesial: what a straight film hides lies across the second. */
const poses: readonly (readonly [string, Pose])[] = [
  ["Aslant, the films behind it", { yawDeg: 38, pitchDeg: 16 }],
  ["From mesial, across what a straight film shows", { yawDeg: 90, pitchDeg: 0 }],
];

/**
 * A page for each canal whose films a person chose, or else for the one of which the straight film hides most: the canal in
 * space, its true and apparent bend, and what was hidden.
 */
export function spacePages(source: CaseSource): Page[] {
  return chosen(canalsTold(source), source).map((canal) => pageOf(canal, source, 1));
}

/** The same for print, of the one canal of which most is hidden; letters are larger against the small drawings. */
export function spaceOnPaper(source: CaseSource): Page[] {
  return mostHidden(canalsTold(source)).map((canal) => pageOf(canal, source, 1.5));
}

function canalsTold({ ledger, parts }: CaseSource): CanalTold[] {
  return ledger.flatMap((entry) => {
    const told = entry.topic === "twoView" ? courseRead(entry) : undefined;
    if (told?.hiddenDeg === undefined || isTooNear(told)) return [];
    const { hiddenDeg } = told;
    return [{ entry, canal: viewsOf(entry).canal, films: filmsOfSpace(entry, parts), told: { ...told, hiddenDeg } }];
  });
}

function chosen(canals: readonly CanalTold[], { parts }: CaseSource): readonly CanalTold[] {
  const paired = new Set(partsOf(parts, "pairing").map(({ body }) => body.canal));
  const own = canals.filter(({ canal }) => paired.has(canal));
  return own.length > 0 ? own : mostHidden(canals);
}

const mostHidden = (canals: readonly CanalTold[]): readonly CanalTold[] =>
  [...canals].sort((a, b) => b.told.hiddenDeg - a.told.hiddenDeg).slice(0, 1);

function pageOf(canal: CanalTold, source: CaseSource, letters: number): Page {
  const { entry, films, told } = canal;
  const graph = bendShown({
    ...{ turn: told.turn, theme: source.theme, widthPx: 900, letters },
    films: told.seen.map(({ profile }, at) => ({ name: films[at]?.name ?? `film ${at + 1}`, profile })),
  });
  const drawings: Block[] = [
    ...poses.map(
      ([caption, pose]): Block => ({ kind: "figure", figure: drawn(canal, source, pose, letters), caption }),
    ),
    ...(told.turn.length > 1
      ? [{ kind: "figure", figure: graph, caption: "True and apparent bend along the canal" } as const]
      : []),
  ];
  return {
    title: `Canal ${canal.canal} in space`,
    subtitle: `from films ${films.map(({ name }) => name).join(" and ")}`,
    on:
      films
        .map(({ takenOn }) => takenOn)
        .sort()
        .at(-1) ?? "",
    blocks: [...drawings, ...wordsOf(canal, source)],
    notes: [`${source.methods.get(entry.topic) ?? entry.topic} Ledger ${entry.id.slice(0, 12)}.`],
  };
}

function drawn({ canal, films, told }: CanalTold, source: CaseSource, pose: Pose, letters: number): Figure {
  return courseInSpace({
    ...{ name: canal, course: told.course, spread: told.sigma, pose, letters, theme: source.theme, widthPx: 900 },
    films: told.anglesDeg.map((angleDeg, at) => ({
      ...{ name: films[at]?.name ?? `film ${at + 1}`, angleDeg, receptor: told.receptorRead },
    })),
    ...standsAs(films[0]),
    innerSide: innerSideOf(source),
  });
}

/** Inside the upper row a side is called palatal. */
const innerSideOf = ({ parts }: CaseSource): "lingual" | "palatal" =>
  /^[1256]/.test(thePart(parts, "case")?.body.tooth ?? "") ? "palatal" : "lingual";

/** The sentence, the numbers beside it, and what speaks against them. */
function wordsOf(canal: CanalTold, source: CaseSource): Block[] {
  const { entry, told, films } = canal;
  const read = ledgerReader(source.ledger);
  const angle = (name: string): Line => read.withInterval(entry.subject, name, { digits: 0, unit: "°" });
  const by = told.anglesDeg.some((one) => one === 0) ? "straight" : "straightest";
  const seen = films.flatMap(({ name }, at): Line => {
    const number = read.number(entry.subject, `apparent[${at}]`, 0);
    return number === undefined
      ? []
      : [{ text: at === 0 ? "; seen on the films: " : ", " }, number, { text: `° (${name})` }];
  });
  const radius = read.number(entry.subject, "curvature.pruettRadiusMm", 1);
  const lines: Line[] = [
    [...angle("hiddenDeg"), { text: ` hidden by the ${by} film` }],
    ...sidesOf(told, { mark: referenceOf(entry) ?? "the shared landmark", inner: innerSideOf(source) }).map(says),
    [
      { text: "Largest bend in space " },
      ...spaceNumber(canal, source, "pruettDeg"),
      ...(radius === undefined ? [] : [{ text: ", radius " }, radius, { text: " mm" }]),
      ...seen,
    ],
    [{ text: "Length in space " }, ...read.withInterval(entry.subject, "lengthMm", { digits: 1, unit: "mm" })],
  ];
  const cautions = told.cautions.map((caution) => says(filmsNamed(caution)));
  return [
    { kind: "text", heading: "What one film hides (95 % intervals)", lines },
    ...(cautions.length === 0 ? [] : [{ kind: "text", heading: "Beside these numbers", lines: cautions } as const]),
  ];
}

/** A number of the curvature whose interval stands beside the entry's others. */
function spaceNumber({ entry }: CanalTold, source: CaseSource, name: string): Line {
  const read = ledgerReader(source.ledger);
  const value = read.number(entry.subject, `curvature.${name}`, 0);
  const [low, high] = ["low", "high"].map((end) => read.number(entry.subject, `intervals.${name}.${end}`, 0));
  if (value === undefined) return [{ text: "–", quiet: true }];
  if (low === undefined || high === undefined) return [value, { text: "°" }];
  const quiet = { quiet: true } as const;
  return [
    value,
    { text: "°" },
    { text: " (", ...quiet },
    { ...low, ...quiet },
    { text: "–", ...quiet },
    { ...high, ...quiet },
    { text: ")", ...quiet },
  ];
}

/** Where the bend turns, and where the canal lies: two sentences that are never mixed. */
function sidesOf({ side, liesSide }: InSpace, { mark, inner }: { mark: string; inner: string }): string[] {
  const named = (one: string): string => (one === "lingual" ? inner : one);
  const turns =
    side === "mixed"
      ? "The bends turn to both sides, one after the other"
      : side === "undetermined"
        ? "To which side the bend turns is open"
        : `The bend turns to ${named(side)}`;
  if (liesSide === undefined) return [turns];
  const lies =
    liesSide === "undetermined"
      ? `Whether the canal lies to buccal or to ${inner} of ${mark} is open`
      : `The canal lies to ${named(liesSide)} of ${mark}`;
  return [turns, lies];
}

const filmsNamed = (caution: string): string =>
  sentence(
    caution
      .replaceAll(/\bviews\[(\d+)\]/g, (_, index: string) => `film ${Number(index) + 1}`)
      .replaceAll(/(?<= )-(?=\d)/g, "−"),
  );
