import { type AxisTold, type DiagnosisTold, diagnosisTold, differencesFrom } from "../../ledger/diagnosis-told.ts";
import { type CodesShown, type CodesTold, codesShown } from "../../ledger/own-codes.ts";
import { sheetsUpTo } from "../../record/earlier-sheets.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import { type PartOf, partsOf } from "../../record/parts.ts";
import { apicalWords, pulpalWords } from "../../record/words/case-words.ts";
import type { CaseSource } from "../case-source.ts";
import { entryAsDecided } from "../entry-as-decided.ts";
import { type LedgerReader, ledgerReader } from "../ledger-reader.ts";
import { momentWords } from "../moment-words.ts";
import { type Block, type Line, type Page, says } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import { textBlock } from "./presenting.ts";

/** The clinician's diagnosis, each time it was made, beside what the findings speak for. */
export function diagnosisPages(source: CaseSource): Page[] {
  return partsOf(source.parts, "diagnosis").map(({ body }) => {
    const entry = entryBeside(source, body);
    return {
      title: "Diagnosis",
      subtitle: momentWords(body.madeOn, source.parts),
      on: body.madeOn,
      blocks: [
        { kind: "text", heading: "Pulp", lines: [says(sentence(pulpalWords[body.pulpal]))] },
        { kind: "text", heading: "Apical tissues", lines: [says(sentence(apicalWords[body.apical]))] },
        ...textBlock("Because", body.because),
        ...differsBlock(body, entry),
        ...suggested(body, entry),
      ],
      notes: ["Terms of the AAE/ABE consensus of 2009. The diagnosis is the clinician's own."],
    };
  });
}

type Diagnosis = PartOf<"diagnosis">["body"];

/** The entry that it was made beside, or that of the findings up to its day. */
function entryBeside(source: CaseSource, { suggestion, madeOn }: Diagnosis): LedgerEntry | undefined {
  const sheet = sheetsUpTo(source.parts, madeOn)[0];
  return entryAsDecided(source, suggestion, `diagnosis of ${sheet?.id ?? ""}`)?.entry;
}

/** Why it differs; a reason that is left over from other terms is not told. */
function differsBlock(body: Diagnosis, entry: LedgerEntry | undefined): Block[] {
  const told = diagnosisTold(entry);
  if (told !== undefined && differencesFrom(told, body).length === 0) return [];
  return textBlock("It differs from what the findings speak for, because", body.differsBecause ?? "");
}

/** What the rules say of the findings that it rests on, and the codes of its terms. */
function suggested(body: Diagnosis, entry: LedgerEntry | undefined): Block[] {
  const told = diagnosisTold(entry);
  const codes = codesBlocks(codesShown(body, entry));
  if (told === undefined || entry === undefined) return codes;
  const read = ledgerReader([entry]);
  const share = { head: "", share: 0.12, align: "left" as const };
  return [
    ...urgentBlock(told),
    {
      kind: "table",
      caption: "What the findings speak for, by the table of rules",
      columns: [
        share,
        { ...share, head: "Term", share: 0.26 },
        { ...share, head: "For it", share: 0.31 },
        { ...share, head: "Against it", share: 0.31 },
      ],
      rows: [
        axisRow("Pulp", told.pulpal, termOf(read, entry.subject, "pulpal")),
        axisRow("Apex", told.apical, termOf(read, entry.subject, "apical")),
      ],
    },
    ...codes,
  ];
}

const termOf = (read: LedgerReader, subject: string, axis: "pulpal" | "apical"): Line => {
  const [term, status] = [read.text(subject, `${axis}.term`), read.text(subject, `${axis}.status`)];
  return [term ?? { text: "–" }, ...(status === undefined ? [] : [{ text: ", " }, status])];
};

/** More findings than this for or against a term are counted. */
const mostFindings = 8;

function findingsIn(reasons: AxisTold["for"]): Line {
  if (reasons.length === 0) return says("–");
  // Several rows rest on the same findings: each is named once.
  const named = [...new Set(reasons.flatMap(({ finding }) => finding.split("; ")))];
  const more = named.length > mostFindings ? `; and ${named.length - mostFindings} more` : "";
  return says(`${sentence(named.slice(0, mostFindings).join("; "))}${more}`);
}

function axisRow(name: string, axis: AxisTold, term: Line): Line[] {
  return [says(name), term, findingsIn(axis.for), findingsIn(axis.against)];
}

function urgentBlock({ urgent }: DiagnosisTold): Block[] {
  if (urgent.length === 0) return [];
  return [{ kind: "text", heading: "Urgent", lines: urgent.map((one) => says(sentence(one.says))) }];
}

function codesBlocks({ own, told }: CodesShown): Block[] {
  const block = (heading: string, lines: readonly string[]): Block => ({
    ...{ kind: "text", heading, lines: lines.map(says), dense: true },
  });
  const ofTold = told ? [block("Codes of the suggestion, pulp and apex", [...codeLines(told), codesAre])] : [];
  if (own === undefined) return ofTold;
  const lines = [...codeLines(own), ...own.cautions.map(stop), ...(told ? [] : [codesAre])];
  return [block("Codes of the diagnosis, pulp and apex", lines), ...ofTold];
}

const codesAre = "The codes are published; which of them goes with which term is our own reading.";

const lists = [
  ["icd10", "ICD-10"],
  ["icd10Cm", "ICD-10-CM"],
  ["icd11", "ICD-11"],
] as const;

/** The codes of both terms in one line, and what the European guideline calls them where it differs in another. */
function codeLines({ codes, european }: Pick<CodesTold, "codes" | "european">): string[] {
  const inLists = lists.flatMap(([list, name]) => {
    const pair = codes[list];
    return pair === undefined ? [] : [`${name}: ${pair.pulpal}, ${pair.apical}.`];
  });
  const { pulpal = "the same", apical = "the same" } = european;
  const differs = (european.pulpal ?? european.apical) !== undefined;
  return [
    inLists.join(" "),
    ...(differs ? [`European guideline of 2023: ${pulpal.toLowerCase()}, ${apical.toLowerCase()}.`] : []),
  ];
}

const stop = (text: string): string => `${text}.`;
