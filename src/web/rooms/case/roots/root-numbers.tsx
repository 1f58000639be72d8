import type { Fault } from "../../../../core/refusal.ts";
import type { CanalsRead } from "../../../../ledger/canals-read.ts";
import { Button } from "../../../parts/button.tsx";
import { countOf } from "../../../parts/figures-in-words.ts";
import { sideOfTooth } from "../../../words/two-view-words.ts";
import type { RootsAsRead } from "./use-roots-read.ts";

interface BelowRootOptions {
  readonly name: string;
  readonly at: number;
  readonly read: RootsAsRead;
}

/** Below a root: its name, and its course and type as the ledger has them, or why they can't be told. */
export function BelowRoot({ name, at, read }: BelowRootOptions) {
  const faults = read.faults.filter(({ path }) => path === `roots.${at}` || path.startsWith(`roots.${at}.`));
  const told = read.now?.roots[at];
  return (
    <>
      <strong>{name}</strong>
      {faults.length > 0 ? <Faults {...{ faults }} /> : <span className="quiet">{told ? courseWords(told) : "…"}</span>}
    </>
  );
}

const courseWords = ({ sequence, vertucci }: CanalsRead["roots"][number]): string =>
  vertucci === null ? `${sequence}, no type` : `${sequence}, type ${vertucci}`;

const Faults = ({ faults }: { readonly faults: readonly Fault[] }) => (
  <span className="look board-root-faults">{faults.map(({ says }) => says).join("; ")}</span>
);

interface RootsInNumbersOptions {
  readonly read: RootsAsRead;
  /** Leads to the field for the reason, where an unusual form stands without one. */
  readonly giveReason: (() => void) | undefined;
}

/** The tooth's code and what it counts; its line keeps its place while they are worked out. */
export function RootsInNumbers({ read: { now, entry, isAbout }, giveReason }: RootsInNumbersOptions) {
  if (now === undefined)
    return (
      <p className="root-numbers">
        {isAbout && entry ? (
          <span className="look">These roots contradict themselves; their code is told once that is changed.</span>
        ) : (
          <span className="root-code quiet">…</span>
        )}
      </p>
    );
  return (
    <p className="root-numbers">
      <span className="root-code">{now.code.display}</span>
      <span className="quiet">{countsInWords(now)}</span>
      {now.extraRoot && <span>{now.extraRoot}</span>}
      {giveReason && (
        <span className="look">
          <Button weight="bare" onClick={giveReason}>
            ? unusual for this tooth: give a reason, or change
          </Button>
        </span>
      )}
    </p>
  );
}

/** What the ledger notes about these roots, what it could not tell, and what it refused in all of them. */
export function RootNotes({ read, tooth }: { readonly read: RootsAsRead; readonly tooth: string }) {
  const notes = read.now?.notes.filter((note) => note !== read.unusual) ?? [];
  const missing = read.now?.notComputed.map(({ why }) => why) ?? [];
  const loose = read.faults.filter(({ path }) => !/^roots\.\d/.test(path));
  if (notes.length + missing.length + loose.length === 0) return null;
  return (
    <ul className="quiet">
      {[...notes, ...missing].map((note) => (
        <li key={note}>{sideOfTooth(note, tooth)}</li>
      ))}
      {loose.map(({ says }) => (
        <li key={says} className="look">
          {says}
        </li>
      ))}
    </ul>
  );
}

function countsInWords({ roots, canalCount, foramenCount }: CanalsRead): string {
  return [
    countOf(roots.length, "root"),
    `${countOf(canalCount, "canal")} at the orifices`,
    countOf(foramenCount, "foramen", "foramina"),
  ].join(", ");
}
