import { type ToothFacts, teeth } from "../../core/tooth/teeth.ts";
import type { BodyOf } from "../parts.ts";

type Visit = BodyOf<"visit">;
type Check = NonNullable<Visit["timeOutCheck"]>;

/** Whether the tooth that was named before the access is the case's, and in what it differs. */
export interface TimeOutAnswer {
  readonly matches: boolean;
  /** In what it differs: another side, another row of teeth, another place in it. */
  readonly differs: readonly ("side" | "row" | "tooth")[];
  readonly says: string;
}

/**
 * The answer to a time-out.
 * Takes the case's tooth and the one that was named, both in two digits of ISO 3950.
 * Gives in words what differs: where they don't match, nothing is to be opened.
 */
export function timeOutAnswer(ofCase: string, named: string): TimeOutAnswer {
  if (ofCase === named) return { matches: true, differs: [], says: `${inWords(named)}: as the case has it.` };
  const [one, other] = [factsOf(ofCase), factsOf(named)];
  const differs = [
    ...(one?.side === other?.side ? [] : ["side" as const]),
    ...(one?.arch === other?.arch ? [] : ["row" as const]),
    ...(ofCase[1] === named[1] && one?.dentition === other?.dentition ? [] : ["tooth" as const]),
  ];
  const what = differs.map((kind) => differenceWords[kind]).join(", ");
  return { matches: false, differs, says: `Named: ${inWords(named)}. The case is of ${inWords(ofCase)}: ${what}.` };
}

const differenceWords = { side: "another side", row: "the other row of teeth", tooth: "another tooth" } as const;

const factsOf = (twoDigit: string): ToothFacts | undefined => teeth.find((tooth) => tooth.twoDigit === twoDigit);

function inWords(twoDigit: string): string {
  const name = factsOf(twoDigit)?.name;
  return name === undefined ? twoDigit : `${twoDigit}, ${name}`;
}

/**
 * The visit with a time-out as it was answered. Only where the named tooth is the case's is it noted as done; another one stays
 * in the record as it was named, and in the visit's notes where the clock runs.
 */
export function withTimeOut(visit: Visit, ofCase: string, check: Check): Visit {
  const { matches, says } = timeOutAnswer(ofCase, check.tooth);
  const answered = { ...visit, timeOutCheck: check };
  if (matches) return { ...answered, timeOut: "toothAndSideChecked" };
  const note = check.atMin === undefined ? [] : [{ atMin: check.atMin, says: `Time-out, not a match. ${says}` }];
  return { ...answered, timeOut: "notDone", ...(note.length === 0 ? {} : { log: [...(visit.log ?? []), ...note] }) };
}
