import type { LedgerReader } from "./ledger-reader.ts";
import type { Line } from "./page-model.ts";

/** A share from 0 to 1 with its interval, as `0.80 (0.71 to 0.87)`, by their places in an entry's output; a dash where it is not there. */
export function shareWithInterval(
  read: LedgerReader,
  subject: string,
  at: { readonly share: string; readonly interval: string },
): Line {
  const [share, low, high] = [at.share, `${at.interval}.low`, `${at.interval}.high`].map((path) =>
    read.number(subject, path, 2),
  );
  const ends =
    low === undefined || high === undefined
      ? []
      : [{ text: " (" }, low, { text: " to " }, high, { text: ")" }].map((run) => ({ ...run, quiet: true }));
  return [share ?? { text: "–" }, ...ends];
}
