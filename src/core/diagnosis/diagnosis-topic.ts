import aaeAbe from "../../../data/aae-abe-2009/source.json" with { type: "json" };
import bastos from "../../../data/bastos-2014/source.json" with { type: "json" };
import duncan from "../../../data/duncan-2023/source.json" with { type: "json" };
import glickman from "../../../data/glickman-schweitzer-2013/source.json" with { type: "json" };
import icd10 from "../../../data/icd-10-2016/source.json" with { type: "json" };
import icd10Cm from "../../../data/icd-10-cm-2025/source.json" with { type: "json" };
import icd11 from "../../../data/icd-11-2024/source.json" with { type: "json" };
import jacobsen from "../../../data/jacobsen-1980/source.json" with { type: "json" };
import lee from "../../../data/lee-2023/source.json" with { type: "json" };
import review from "../../../data/orofacial-pain-review-2025/source.json" with { type: "json" };
import pimentel from "../../../data/pimentel-costa-chapter/source.json" with { type: "json" };
import { sourcesOf } from "../basis.ts";
import { defineTopic } from "../topic.ts";
import { codesOf } from "./terms/codes-of.ts";
import { type AxisDecision, decideAxis, entryIf } from "./terms/decide-axis.ts";
import { type DiagnosisInput, diagnosisInput } from "./terms/diagnosis-input.ts";
import { type DiagnosisOutput, diagnosisOutput, type Entry } from "./terms/diagnosis-output.ts";
import { europeanTerms } from "./terms/european-terms.ts";
import { type Facts, factsOf, withPulp } from "./terms/facts-of.ts";
import { placesOf } from "./terms/hold.ts";
import { examinedOf } from "./terms/input-faults.ts";
import { type Row, rows } from "./terms/rules.ts";

const sources = sourcesOf([aaeAbe, review, pimentel, lee, jacobsen, bastos, icd10, icd10Cm, icd11, glickman, duncan]);

/**
 * The pulpal and apical terms that findings speak for, by a table of rows, with what speaks against them and what is missing.
 * @throws Refusal `tooth.unknown`; `input.impossible` for a reply that lingers and is none, a control that is the tooth, a
 * canal named twice, an injury after the examination
 * @source AAE/ABE consensus, J Endod, 2009, 1634 (seen) and the sources of the rows; docs/methods/diagnosis
 */
export const diagnosisTopic = defineTopic({
  name: "diagnosis",
  version: 1,
  summary: "Pulpal and apical terms from the findings, with what speaks for and against each and what is missing.",
  input: diagnosisInput,
  output: diagnosisOutput,
  sources,
  compute: diagnosis,
});

function diagnosis(input: DiagnosisInput): DiagnosisOutput {
  const facts = factsOf(examinedOf(input));
  const origin = rows.find((row) => row.kind === "source" && entryIf(row, facts).length > 0);
  const elsewhere = ofKind("source", facts);
  const pulpal = decideAxis("pulpal", facts, elsewhere);
  const all = withPulp(facts, pulpal);
  const apical = decideAxis("apical", all, elsewhere);
  const codes = codesOf({ pulpal: pulpal.term, apical: apical.term }, all);
  const also = rows.find((row) => row.kind === "also" && row.term !== apical.term && entryIf(row, all).length > 0);
  const european = europeanTerms({ pulpal: pulpal.term, apical: apical.term }, facts);
  return {
    pulpal: { ...axisOf(pulpal), code: codes.icd10.pulpal },
    apical: { ...axisOf(apical), code: codes.icd10.apical },
    ...(also === undefined ? {} : { apicalAlso: also.term }),
    source: origin?.origin ?? "this tooth",
    sourceBecause: elsewhere,
    urgent: ofKind("urgent", facts),
    contradictions: contradictionsOf(all),
    asks: ofKind("asks", all),
    codes,
    european: european.terms,
    basis: basis(),
    cautions: [...ofKind("caution", all).map(inOneLine), ...possible("pulpal", pulpal), ...possible("apical", apical)],
    notComputed: [...undetermined("pulpal", pulpal), ...undetermined("apical", apical), ...european.notComputed],
  };
}

const axisOf = ({ missing: _missing, ...axis }: AxisDecision) => axis;

const ofKind = (kind: Row["kind"], facts: Facts): Entry[] =>
  rows.filter((row) => row.kind === kind).flatMap((row) => entryIf(row, facts));

const contradictionsOf = (facts: Facts) =>
  rows
    .filter((row) => row.kind === "contradiction")
    .flatMap((row) => entryIf(row, facts).map((entry) => ({ ...entry, places: placesOf(row.when, facts) })));

const inOneLine = ({ row, finding, says }: Entry): string => `${says}${finding === "" ? "" : ` (${finding})`} [${row}]`;

function possible(axis: string, { term, status, missing }: AxisDecision): string[] {
  if (status !== "possible" || missing.length === 0) return [];
  return [`${axis}: ${term} is possible and not determined; missing: ${missing.join("; ")}`];
}

/** A row that gives no term says why; without one it is what is missing. */
function undetermined(axis: string, { status, missing, for: [deciding] }: AxisDecision) {
  if (status !== "not determined") return [];
  const lacking = missing.length === 0 ? [] : [`missing: ${missing.join("; ")}`];
  const why = [...(deciding === undefined ? [] : [deciding.says]), ...lacking];
  return [{ name: `${axis}.term`, why: why.join("; ") || "the findings fit none of the terms" }];
}

const basis = () => ({
  formula: "Rows of a table, each axis decided by the first that holds, in three-valued logic (yes, no, not done)",
  assumptions: [
    "A test that was not done counts neither for nor against.",
    "The codes are published; which of them goes with which term is our own crosswalk.",
    "The rows whose mark is common practice have no published source.",
  ],
  sources: sources.map(({ id }) => id),
});
