import { createContext, type ReactNode, useContext, useEffect, useId, useMemo } from "react";
import type { Fault } from "../../../core/refusal.ts";
import { type BodyPath, valueAt, withValueAt } from "../../record/body-path.ts";
import type { Draft, DraftBook, Editable } from "../../record/draft-book.ts";
import { lowered } from "../../words/capital.ts";

/** The part, or the item of the cabinet, that the fields below write in. */
interface Editing {
  readonly part: Editable;
  readonly title: string;
  readonly draft: Draft | undefined;
  readonly book: DraftBook | undefined;
  /** What the ledger refused in the part as it is recorded; paths are places of the body. */
  readonly told: readonly Fault[];
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
  const editing = useMemo(() => ({ part, title, draft, book, told, at: "", of: "" }), [part, title, draft, book, told]);
  return (
    <Context.Provider value={editing}>
      <fieldset className="edit-part" disabled={book === undefined} onBlur={() => book?.commit(part.id)}>
        {children}
      </fieldset>
    </Context.Provider>
  );
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
export const useEditedPart = (): Editable => useEditing().part;

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
  readonly write: (value: unknown, inWords: string, when: "now" | "typing") => void;
}

/** The value at a place of the part that is edited, and how to write it. */
export function useField(at: BodyPath, label: string): Field {
  const { part, title, draft, book, told, at: outer, of } = useEditing();
  const place = joined(outer, at);
  const value = valueAt(draft?.body ?? part.body, place);
  const fault = [...(draft?.faults ?? []), ...told].find(({ path }) => path === place)?.says;
  const fullLabel = of === "" ? label : `${label} of ${of}`;
  const write: Field["write"] = (next, inWords, when) => {
    const about = lowered(fullLabel);
    book?.write({ part, title }, (body) => withValueAt(body, place, next), `${about}: ${inWords}`);
    if (when === "now") book?.commit(part.id);
  };
  return { id: useId(), value, fault, readOnly: book === undefined, fullLabel, write };
}
