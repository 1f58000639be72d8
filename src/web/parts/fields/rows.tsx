import { Fragment, type KeyboardEvent, type ReactNode } from "react";
import type { BodyPath } from "../../record/body-path.ts";
import { Button } from "../button.tsx";
import { useField, Within } from "./editing.tsx";
import { moveInTable } from "./move-in-table.ts";
import "./rows.css";

/** One column of a table of rows. */
export interface Column {
  readonly head: string;
  readonly unit?: string;
  readonly cell: ReactNode;
  /** Takes of the width that is left over. */
  readonly wide?: boolean;
  readonly figure?: boolean;
  /** Holds a few signs only; name: the eight letters of a canal at most. */
  readonly narrow?: boolean | "name";
}

interface RowsOptions {
  readonly at: BodyPath;
  /** What the table holds, for the caption that is read out. */
  readonly label: string;
  readonly columns: readonly Column[];
  /** The words of the button, as "Add an irrigant"; absent where rows are not added by hand. */
  readonly add?: string;
  readonly start: () => unknown;
  /** Rows are neither added nor taken out here. */
  readonly fixed?: boolean;
  /** The order of the rows says something: buttons move a row up and down. */
  readonly ordered?: boolean;
  /** Whose fields the row holds, as MB1. */
  readonly nameOf: (row: unknown, index: number) => string;
}

/** A table whose rows are items of a list in the body; cells are fields. Arrow keys walk, Alt and an arrow moves a row. */
export function Rows({ at, label, columns, add, start, nameOf, fixed = false, ordered = false }: RowsOptions) {
  const field = useField(at, label);
  const changes = !field.readOnly && !fixed;
  const rows: readonly unknown[] = Array.isArray(field.value) ? field.value : [];
  const remove = (index: number) =>
    field.write(
      rows.filter((_, one) => one !== index),
      `${nameOf(rows[index], index)} taken out`,
      "now",
    );
  const move = (index: number, to: number) => {
    if (to < 0 || to >= rows.length) return;
    const others = rows.filter((_, one) => one !== index);
    field.write([...others.slice(0, to), rows[index], ...others.slice(to)], "order changed", "now");
  };
  const press = (event: KeyboardEvent, index: number) => {
    if (!event.altKey || (event.key !== "ArrowUp" && event.key !== "ArrowDown")) return;
    event.preventDefault();
    move(index, event.key === "ArrowUp" ? index - 1 : index + 1);
  };
  return (
    <div className="rows">
      {rows.length > 0 && (
        <div className="rows-scroll">
          <table className="rows-table" onKeyDown={moveInTable}>
            <caption className="unseen">{label}</caption>
            <RowsHead columns={columns} changes={changes} />
            <tbody>
              {rows.map((row, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: rows of a body have no other name than their place
                <tr key={index} onKeyDown={(event) => press(event, index)}>
                  <Within at={`${at}.${index}`} of={nameOf(row, index)}>
                    {columns.map(({ head, cell, figure, wide, narrow }) => (
                      <td key={head} data-figure={figure} data-wide={wide} data-narrow={narrow}>
                        {cell}
                      </td>
                    ))}
                  </Within>
                  {changes && (
                    <td className="rows-remove" data-ordered={ordered}>
                      {ordered && <MoveRow {...{ index, move }} last={rows.length - 1} name={nameOf(row, index)} />}
                      <button type="button" onClick={() => remove(index)} aria-label={`Remove ${nameOf(row, index)}`}>
                        <svg viewBox="0 0 16 16" aria-hidden="true">
                          <path d="M4 4l8 8M12 4l-8 8" />
                        </svg>
                      </button>
                    </td>
                  )}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {add !== undefined && !field.readOnly && (
        <Button weight="bare" onClick={() => field.write([...rows, start()], "row added", "now")}>
          {add}
        </Button>
      )}
      {rows.length === 0 && field.readOnly && <p className="quiet">none recorded</p>}
    </div>
  );
}

interface MoveRowOptions {
  readonly index: number;
  readonly last: number;
  readonly name: string;
  readonly move: (from: number, to: number) => void;
}

/** What Alt and an arrow do, by pointer. */
const MoveRow = ({ index, last, name, move }: MoveRowOptions) => (
  <>
    <button type="button" disabled={index === 0} onClick={() => move(index, index - 1)} aria-label={`Move ${name} up`}>
      <svg viewBox="0 0 16 16" aria-hidden="true">
        <path d="M8 13V3M4 7l4-4 4 4" fill="none" />
      </svg>
    </button>
    <button
      type="button"
      disabled={index === last}
      onClick={() => move(index, index + 1)}
      aria-label={`Move ${name} down`}
    >
      <svg viewBox="0 0 16 16" aria-hidden="true">
        <path d="M8 3v10M4 9l4 4 4-4" fill="none" />
      </svg>
    </button>
  </>
);

const RowsHead = ({ columns, changes }: { readonly columns: readonly Column[]; readonly changes: boolean }) => (
  <thead>
    <tr>
      {columns.map(({ head, unit, wide, figure }) => (
        <th key={head} scope="col" data-wide={wide} data-figure={figure}>
          {head}
          {unit && <Fragment> {<span className="rows-unit">{unit}</span>}</Fragment>}
        </th>
      ))}
      {changes && (
        <td className="rows-remove">
          <span className="unseen">remove</span>
        </td>
      )}
    </tr>
  </thead>
);

interface OptionalOptions {
  readonly at: BodyPath;
  readonly label: string;
  readonly add: string;
  readonly start: () => unknown;
  readonly children: ReactNode;
}

/** A group of fields that is there or not there as a whole. */
export function Optional({ at, label, add, start, children }: OptionalOptions) {
  const field = useField(at, label);
  if (field.value === undefined)
    return field.readOnly ? null : (
      <div className="field">
        <Button weight="bare" onClick={() => field.write(start(), "noted", "now")}>
          {add}
        </Button>
      </div>
    );
  return (
    <Within at={at}>
      {children}
      {!field.readOnly && (
        <div className="field field-end">
          <Button weight="bare" onClick={() => field.write(undefined, "taken out", "now")}>
            Take out the {label}
          </Button>
        </div>
      )}
    </Within>
  );
}
