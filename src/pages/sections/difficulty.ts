import {
  askedInShort,
  type DifficultyTold,
  difficultySubject,
  difficultyTold,
  groupWords,
  type HardFact,
} from "../../ledger/difficulty-told.ts";
import { entryNow } from "../../ledger/entry-now.ts";
import { latestOf } from "../../ledger/latest-of.ts";
import { lastPlan } from "../../ledger/plan-told.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import { type PartOf, partsOf } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import { entryAsDecided } from "../entry-as-decided.ts";
import { type LedgerReader, ledgerReader } from "../ledger-reader.ts";
import { momentWords } from "../moment-words.ts";
import { type Block, type Line, type Page, says, type Table } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import { sourceWithStar } from "../source-name.ts";

/** What makes the tooth harder, as it stood at planning, else as the record stands; no total and no grade. */
export function difficultyPages(source: CaseSource): Page[] {
  const plan = lastPlan(source.parts);
  const on = plan?.body.madeOn ?? latestOf(partsOf(source.parts, "findings"))?.body.takenOn;
  const { entry, standing } = plan === undefined ? asItStands(source) : asPlanned(source, plan);
  const told = difficultyTold(entry);
  if (told === undefined || told.facts.length === 0 || entry === undefined || on === undefined) return [];
  const read = ledgerReader([entry]);
  return [
    {
      title: "What makes it harder",
      subtitle: `${momentWords(on, source.parts)}, ${standing}`,
      on,
      blocks: [...tableOf(told.facts, read, entry.subject), ...askedBlock(told.asked)],
      notes: ["A list without a total and without a grade. What nobody recorded counts neither way."],
    },
  ];
}

interface ListShown {
  readonly entry: LedgerEntry | undefined;
  readonly standing: string;
}

const asItStands = ({ ledger, parts }: CaseSource): ListShown => ({
  entry: entryNow("difficulty", ledger, parts),
  standing: "as the record stands",
});

function asPlanned(source: CaseSource, { id, body }: PartOf<"plan">): ListShown {
  const decided = entryAsDecided(source, body.difficultyEntry, difficultySubject(id));
  const standing = decided?.stood === true ? "as it stood at planning" : "with what was known then";
  return { entry: decided?.entry, standing };
}

function tableOf(facts: readonly HardFact[], read: LedgerReader, subject: string): Table[] {
  if (facts.length === 0) return [];
  const columns = [
    ["Makes it", 0.15],
    ["Fact", 0.55],
    ["Value", 0.12],
    ["Threshold from", 0.18],
  ] as const;
  return [
    {
      kind: "table",
      caption: "To reach, to shape, to seal, to keep",
      columns: columns.map(([head, share]) => ({ head, share, align: "left" as const })),
      rows: facts.map((fact, at): Line[] => [
        says(groupWords[fact.group].toLowerCase()),
        says(sentence(fact.says)),
        valueInCell(fact, read.number(subject, `facts[${at}].value`, decimalsOf(fact))),
        says(sourceWithStar(fact.threshold)),
      ]),
    },
  ];
}

/** Degrees are whole, as the fact says them; a length has one decimal. */
const decimalsOf = ({ value, unit }: HardFact): number =>
  unit === "°" || (typeof value === "number" && Number.isInteger(value)) ? 0 : 1;

/** A value with its unit, at least so much where one film alone shows it; a dash for what is there or not. */
function valueInCell({ unit = "", atLeast }: HardFact, value: Line[number] | undefined): Line {
  if (value === undefined) return says("–");
  const behind = unit === "" ? [] : [{ text: unit === "°" ? unit : ` ${unit}` }];
  return [...(atLeast === true ? [{ text: "at least " }] : []), value, ...behind];
}

function askedBlock(asked: DifficultyTold["asked"]): Block[] {
  if (asked.length === 0) return [];
  const line = askedInShort(asked).join("; ");
  return [{ kind: "text", heading: "Not recorded", lines: [says(`${sentence(line)}.`)], dense: true }];
}
