import { type Block, type Page, says } from "../page-model.ts";
import { type ConsentCase, inOneLine, told } from "./consent-case.ts";
import { consentWords } from "./consent-words.ts";

const page = (title: string, blocks: readonly Block[]): Page => ({ title, on: "", blocks, notes: [] });

/** What is likely to happen to the tooth as it is. */
export function ifNothing(of: ConsentCase): Page {
  const lines = of.ways.plain.ifNothingIsDone.map((one, at) => told(of, one, `plain.ifNothingIsDone[${at}]`));
  return page(consentWords.nothing, [{ kind: "text", lines: [inOneLine(lines)] }]);
}

/** What the way that was chosen asks of the patient, then and later. */
export function afterwards(of: ConsentCase): Page {
  const at = of.ways.options.findIndex(({ way }) => way === of.plan.chosen);
  const asked = of.ways.options[at]?.plain.whatItAsks ?? [];
  const own = asked.map((one, index) => told(of, one, `options[${at}].plain.whatItAsks[${index}]`));
  const lines = [...own, says(consentWords.callUs), says(consentWords.changed)];
  return page(consentWords.after, [{ kind: "text", points: true, lines }]);
}

/** Room for what the patient wants to ask. */
export const questions = (): Page =>
  page(consentWords.questions, [
    { kind: "text", lines: [says(consentWords.askUs)] },
    { kind: "blanks", labels: ["", ""] },
  ]);

/** The patient's answer, and who signs; names are written by hand and kept by nobody here. */
export function answer({ isMinor }: ConsentCase): Page {
  const parent = isMinor ? [consentWords.parentName, consentWords.parentSignature] : [];
  return page(consentWords.answer, [
    { kind: "text", lines: [says(consentWords.free), says(consentWords.stays)] },
    {
      kind: "blanks",
      ticks: [consentWords.agree, consentWords.other, consentWords.refuse],
      labels: [
        ...[consentWords.yourName, consentWords.yourSignature, ...parent],
        ...[consentWords.ourName, consentWords.ourSignature],
      ],
    },
  ]);
}
