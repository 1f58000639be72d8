import type { LedgerReader } from "./ledger-reader.ts";
import type { Line, Run } from "./page-model.ts";

/** A share from 0 to 1 with its interval, as `0.80 (0.71 to 0.87)`, by their places in an entry's output; never rounded to certainty, a dash where it is not there. */
export function shareWithInterval(
  read: LedgerReader,
  subject: string,
  at: { readonly share: string; readonly interval: string },
): Line {
  const [share, low, high] = [at.share, `${at.interval}.low`, `${at.interval}.high`].map((path) =>
    shareAt(read, subject, path),
  );
  const ends =
    low === undefined || high === undefined
      ? []
      : [{ text: " (" }, low, { text: " to " }, high, { text: ")" }].map((run) => ({ ...run, quiet: true }));
  return [share ?? { text: "–" }, ...ends];
}

/** `<0.01` and `>0.99` where two decimals would say 0 or 1 of what is neither. */
function shareAt(read: LedgerReader, subject: string, path: string): Run | undefined {
  const run = read.number(subject, path, 2);
  const exact = Number(read.number(subject, path, 12)?.text);
  if (run?.text === "0.00" && exact > 0) return { ...run, text: "<0.01" };
  return run?.text === "1.00" && exact < 1 ? { ...run, text: ">0.99" } : run;
}
