import { type AxisTold, type DiagnosisTold, diagnosisTold } from "../../ledger/diagnosis-told.ts";
import { sheetsUpTo } from "../../record/earlier-sheets.ts";
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
  return partsOf(source.parts, "diagnosis").map(({ body }) => ({
    title: "Diagnosis",
    subtitle: momentWords(body.madeOn, source.parts),
    on: body.madeOn,
    blocks: [
      { kind: "text", heading: "Pulp", lines: [says(sentence(pulpalWords[body.pulpal]))] },
      { kind: "text", heading: "Apical tissues", lines: [says(sentence(apicalWords[body.apical]))] },
      ...textBlock("Because", body.because),
      ...textBlock("It differs from what the findings speak for, because", body.differsBecause ?? ""),
      ...suggested(source, body),
    ],
    notes: ["Terms of the AAE/ABE consensus of 2009. The diagnosis is the clinician's own."],
  }));
}

/** What the rules say of the findings that it rests on. */
function suggested(source: CaseSource, { suggestion, madeOn }: PartOf<"diagnosis">["body"]): Block[] {
  const sheet = sheetsUpTo(source.parts, madeOn)[0];
  const decided = entryAsDecided(source, suggestion, `diagnosis of ${sheet?.id ?? ""}`);
  const told = diagnosisTold(decided?.entry);
  if (told === undefined || decided === undefined) return [];
  const { entry } = decided;
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
    ...codesBlock(told),
  ];
}

const termOf = (read: LedgerReader, subject: string, axis: "pulpal" | "apical"): Line => {
  const [term, status] = [read.text(subject, `${axis}.term`), read.text(subject, `${axis}.status`)];
  return [term ?? { text: "–" }, ...(status === undefined ? [] : [{ text: ", " }, status])];
};

/** More findings than this for or against a term are counted. */
const mostFindings = 5;

function findingsIn(reasons: AxisTold["for"]): Line {
  if (reasons.length === 0) return says("–");
  const named = [...new Set(reasons.map(({ finding }) => finding))];
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

function codesBlock({ codes: { icd10, icd11 } }: DiagnosisTold): Block[] {
  const line = `ICD-10: ${icd10.pulpal}, ${icd10.apical}. ICD-11: ${icd11.pulpal}, ${icd11.apical}.`;
  return [{ kind: "text", heading: "Codes of the suggestion, pulp and apex", lines: [says(line)], dense: true }];
}
