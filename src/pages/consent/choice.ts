import { type Block, type Page, says } from "../page-model.ts";
import type { ConsentCase } from "./consent-case.ts";
import { consentWords } from "./consent-words.ts";
import { plainReason } from "./plain-reason.ts";
import { stillToCheck } from "./still-to-check.ts";

/** What is advised, and why, and what must be checked first; where no reason is in plain words, lines to write it on. */
export function choicePage(of: ConsentCase): Page {
  const { ways, plan } = of;
  const name = ways.options.find(({ way }) => way === plan.chosen)?.plain.name ?? "";
  const reason = plainReason(plan);
  const why: Block[] =
    reason === undefined
      ? [
          { kind: "text", lines: [says(consentWords.whyBlank)] },
          { kind: "blanks", labels: ["", ""] },
        ]
      : [{ kind: "text", lines: reason.split(/\n+/).map(says) }];
  const advice: Block = { kind: "text", lines: [says(`${consentWords.weAdvise} ${name}.`)] };
  return { title: consentWords.choice, on: "", blocks: [advice, ...why, ...stillToCheck(of)], notes: [] };
}
