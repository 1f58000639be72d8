import { type PlanTold, planSubject, planTold, type WayTold } from "../../ledger/plan-told.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import { type BodyOf, type PartOf, partsOf } from "../../record/parts.ts";
import { wayChosen } from "../../record/way-chosen.ts";
import { wayWords } from "../../record/words/case-words.ts";
import type { CaseSource } from "../case-source.ts";
import { entryAsDecided } from "../entry-as-decided.ts";
import { type LedgerReader, ledgerReader } from "../ledger-reader.ts";
import { momentWords } from "../moment-words.ts";
import { outcomeFigure } from "../outcome-figure.ts";
import { type Block, type Line, type Page, says, type Table } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import { shareWithInterval } from "../share-with-interval.ts";
import { sourceWithStar } from "../source-name.ts";
import { textBlock } from "./presenting.ts";

type Plan = BodyOf<"plan">;

/** What could be done with its published outcomes, what was chosen and why. */
export function planPages(source: CaseSource): Page[] {
  return partsOf(source.parts, "plan").flatMap(({ id, body }) => {
    const decided = entryAsDecided(source, body.planEntry, planSubject(id));
    const told = planTold(decided?.entry);
    const ways = told === undefined || decided === undefined ? [] : [waysTable(told, decided.entry, body)];
    const titled = { subtitle: momentWords(body.madeOn, source.parts), on: body.madeOn };
    return [
      {
        title: "Options and choice",
        ...titled,
        blocks: [
          ...ways,
          ...weighedTable(body),
          ...choiceBlock(body),
          ...textBlock("Risks named to the patient", body.risksNamed.join("; ")),
        ],
        notes: ["Published series stand beside each other; none is pooled, and none is a chance of this patient."],
      },
      ...outcomePage(told, body, titled, source),
    ];
  });
}

/** What was chosen and why; a plan that was only begun says so. */
function choiceBlock(plan: Plan): Block[] {
  const chosen = wayChosen(plan);
  return chosen === undefined
    ? textBlock("Chosen", "Nothing is chosen yet.")
    : textBlock(`Chosen: ${wayWords[chosen]}, because`, plan.because);
}

function weighedTable({ options, chosen }: Plan): Table[] {
  const rows = options.filter(({ forIt, againstIt }) => forIt !== "" || againstIt !== "");
  if (rows.length === 0) return [];
  return [
    {
      kind: "table",
      caption: "What speaks for and against each way",
      columns: [
        { head: "Way", align: "left", share: 0.22 },
        { head: "For it", align: "left", share: 0.39 },
        { head: "Against it", align: "left", share: 0.39 },
      ],
      rows: rows.map((option) => [
        says(`${sentence(wayWords[option.way])}${option.way === chosen ? " (chosen)" : ""}`),
        says(option.forIt),
        says(option.againstIt),
      ]),
    },
  ];
}

/** Every way that is open or waits for an answer, with the nearest published series of healing and of retention. */
function waysTable({ options }: PlanTold, entry: LedgerEntry, plan: Plan): Table {
  const chosen = wayChosen(plan);
  const read = ledgerReader([entry]);
  const shown = options
    .map((option, index) => ({ option, at: `options[${index}]` }))
    .filter(({ option }) => option.standing !== "does not fit" || option.way === chosen);
  const columns = [
    ["Way", 0.19],
    ["Must be true first", 0.15],
    ["Healing or living pulp", 0.27],
    ["Still in place", 0.27],
    ["Visits", 0.12],
  ] as const;
  return {
    kind: "table",
    caption: "Ways with the series nearest to this case, n/N with 95 % interval, * recalled",
    columns: columns.map(([head, share]) => ({ head, share, align: "left" as const })),
    rows: shown.map(({ option, at }): Line[] => [
      says(`${sentence(wayWords[option.way])}${option.way === chosen ? " (chosen)" : ""}${waits(option)}`),
      says(mustsInWords(option)),
      seriesOf(option, at, ["healing", "pulp"], { read, subject: entry.subject }),
      seriesOf(option, at, ["retention", "replacement"], { read, subject: entry.subject }),
      says(option.visits.usual),
    ]),
  };
}

const waits = ({ standing }: WayTold): string => (standing === "open" ? "" : `; ${standing}`);

function mustsInWords({ mustBeTrueFirst }: WayTold): string {
  const count = (standing: "met" | "notMet" | "notRecorded") =>
    mustBeTrueFirst.filter((one) => one.standing === standing).length;
  const told = [
    [count("met"), "met"],
    [count("notMet"), "not met"],
    [count("notRecorded"), "not recorded"],
  ] as const;
  const words = told.filter(([number]) => number > 0).map(([number, says]) => `${number} ${says}`);
  return words.length === 0 ? "–" : words.join(", ");
}

type Kind = WayTold["outcomes"][number]["kind"];

/** The first series of a way that tells of healing or of a living pulp; nothing where none is kept. */
export function nearestOutcome(source: CaseSource, { id, body: plan }: PartOf<"plan">): Line {
  const decided = entryAsDecided(source, plan.planEntry, planSubject(id));
  const told = planTold(decided?.entry);
  const chosen = wayChosen(plan);
  const index = told?.options.findIndex(({ way }) => way === chosen) ?? -1;
  const way = told?.options[index];
  if (decided === undefined || way === undefined) return [];
  if (!way.outcomes.some(({ kind }) => kind === "healing" || kind === "pulp")) return [];
  const { entry } = decided;
  return seriesOf(way, `options[${index}]`, ["healing", "pulp"], {
    read: ledgerReader([entry]),
    subject: entry.subject,
  });
}

/** `80/100, 0.80 (0.71 to 0.87), Ng 2011`: the first series of some kinds. */
function seriesOf(
  { outcomes }: WayTold,
  at: string,
  kinds: readonly Kind[],
  { read, subject }: { read: LedgerReader; subject: string },
): Line {
  const index = outcomes.findIndex(({ kind }) => kinds.includes(kind));
  const outcome = outcomes[index];
  if (outcome === undefined) return says("–");
  const place = `${at}.outcomes[${index}]`;
  const [events, n] = [read.number(subject, `${place}.events`, 0), read.number(subject, `${place}.n`, 0)];
  const counts = events && n ? [events, { text: "/" }, n, { text: ", " }] : [];
  const name = `, ${outcome.what}, ${sourceWithStar(outcome)}`;
  return [
    ...counts,
    ...shareWithInterval(read, subject, { share: `${place}.proportion`, interval: `${place}.interval` }),
    { text: name, quiet: true },
  ];
}

/** A drawing holds this many series and stays readable on a slide. */
const mostSeries = 6;

/** The published outcomes of the way that was chosen, drawn. */
function outcomePage(
  told: PlanTold | undefined,
  plan: Plan,
  titled: Pick<Page, "subtitle" | "on">,
  { theme }: CaseSource,
): Page[] {
  const chosen = wayChosen(plan);
  const way = told?.options.find((option) => option.way === chosen);
  if (chosen === undefined || way === undefined || way.outcomes.length === 0) return [];
  const outcomes = way.outcomes.slice(0, mostSeries);
  const figure = outcomeFigure({ outcomes }, { theme, widthPx: 1000, letters: 1.2 });
  if (figure === undefined) return [];
  const more = way.outcomes.length - outcomes.length;
  const caption = `The ${outcomes.length} series nearest to this case${more === 0 ? "" : `; ${more} more stand in the record`}`;
  return [
    {
      title: `Published outcomes: ${wayWords[chosen]}`,
      ...titled,
      blocks: [{ kind: "figure", figure, caption }, ...conflictBlock(way)],
      notes: [],
    },
  ];
}

/** Where published series contradict each other. */
function conflictBlock({ conflicts }: WayTold): Block[] {
  if (conflicts.length === 0) return [];
  const lines = conflicts.map((one) => says(sentence(one.says)));
  return [{ kind: "text", heading: "Where series contradict each other", lines, dense: true }];
}
