import { createContext, type ReactNode, useContext, useEffect, useId, useMemo } from "react";
import type { Fault } from "../../../core/refusal.ts";
import { type BodyPath, valueAt, withValueAt } from "../../record/body-path.ts";
import type { Draft, DraftBook, Editable } from "../../record/draft-book.ts";
import { lowered } from "../../words/capital.ts";

type When = "now" | "typing";

/** What the fields below write in: a part, an item of the cabinet, or a sheet that is kept by who mounts it. */
interface Editing {
  /** As it is recorded; a sheet is no part. */
  readonly part: Editable | undefined;
  readonly body: unknown;
  /** What was refused; paths are places of the body. */
  readonly faults: readonly Fault[];
  /** Absent where the body is only looked at. */
  readonly change: ((body: (before: unknown) => unknown, says: string, when: When) => void) | undefined;
  /** Where in the body the fields stand, and whose they are: `of MB1`. */
  readonly at: BodyPath;
  readonly of: string;
}

const Context = createContext<Editing | undefined>(undefined);

interface EditPartOptions {
  readonly part: Editable;
  /** What its gestures begin with, as `Visit 1`. */
  readonly title: string;
  readonly draft: Draft | undefined;
  /** Absent where the case is only looked at. */
  readonly book: DraftBook | undefined;
  readonly told?: readonly Fault[];
  readonly children: ReactNode;
}

const nothingTold: readonly Fault[] = [];

/** Binds the fields inside it to one part; what was typed becomes a gesture when the person leaves. */
export function EditPart({ part, title, draft, book, told = nothingTold, children }: EditPartOptions) {
  useEffect(() => () => book?.commit(part.id), [book, part.id]);
  const editing = useMemo((): Editing => {
    const change: Editing["change"] = (next, says, when) => {
      book?.write({ part, title }, next, says);
      if (when === "now") book?.commit(part.id);
    };
    const faults = [...(draft?.faults ?? []), ...told];
    return { ...{ part, faults, at: "", of: "" }, body: draft?.body ?? part.body, change: book && change };
  }, [part, title, draft, book, told]);
  return (
    <Context.Provider value={editing}>
      <fieldset className="edit-part" disabled={book === undefined} onBlur={() => book?.commit(part.id)}>
        {children}
      </fieldset>
    </Context.Provider>
  );
}

interface EditSheetOptions {
  readonly body: unknown;
  readonly change: (body: unknown) => void;
  readonly faults: readonly Fault[];
  readonly children: ReactNode;
}

/** Binds the fields inside it to a sheet that is no part, as a page of the settings; whoever mounts it keeps what is written. */
export function EditSheet({ body, change, faults, children }: EditSheetOptions) {
  const editing = useMemo(
    (): Editing => ({ ...{ part: undefined, body, faults, at: "", of: "" }, change: (next) => change(next(body)) }),
    [body, change, faults],
  );
  return <Context.Provider value={editing}>{children}</Context.Provider>;
}

/** Fields inside stand under one place of the body, as a row of a table. */
export function Within({
  at,
  of,
  children,
}: {
  readonly at: BodyPath;
  readonly of?: string;
  readonly children: ReactNode;
}) {
  const editing = useEditing();
  const inner = useMemo(
    () => ({ ...editing, at: joined(editing.at, at), of: of === undefined ? editing.of : of }),
    [editing, at, of],
  );
  return <Context.Provider value={inner}>{children}</Context.Provider>;
}

function useEditing(): Editing {
  const editing = useContext(Context);
  if (editing === undefined) throw new Error("a field stands outside of EditPart");
  return editing;
}

/** The part that is edited, as it is recorded. */
export function useEditedPart(): Editable {
  const { part } = useEditing();
  if (part === undefined) throw new Error("a field of a part stands in a sheet that is none");
  return part;
}

const joined = (outer: BodyPath, inner: BodyPath): BodyPath => [outer, inner].filter((place) => place !== "").join(".");

/** One value of the part that is edited. */
export interface Field {
  readonly id: string;
  readonly value: unknown;
  readonly fault: string | undefined;
  readonly readOnly: boolean;
  /** The field's name with whose it is, for who can't see the table: `Locator of MB1`. */
  readonly fullLabel: string;
  /** Writes a value, told in words (`19 mm`); done at once for a choice, at blur or after two idle seconds for typing. */
  readonly write: (value: unknown, inWords: string, when: When) => void;
}

/** The value at a place of the part that is edited, and how to write it. */
export function useField(at: BodyPath, label: string): Field {
  const { body, faults, change, at: outer, of } = useEditing();
  const place = joined(outer, at);
  const fault = faults.find(({ path }) => path === place)?.says;
  const fullLabel = of === "" ? label : `${label} of ${of}`;
  const write: Field["write"] = (next, inWords, when) =>
    change?.((before) => withValueAt(before, place, next), `${lowered(fullLabel)}: ${inWords}`, when);
  return { id: useId(), value: valueAt(body, place), fault, readOnly: change === undefined, fullLabel, write };
}

/** What was refused under a place of the sheet; paths inside it. */
export function useFaultsUnder(at: BodyPath): readonly Fault[] {
  const { faults, at: outer } = useEditing();
  const place = `${joined(outer, at)}.`;
  return faults.flatMap(({ path, says }) => (path.startsWith(place) ? [{ path: path.slice(place.length), says }] : []));
}
