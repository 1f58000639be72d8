import { type KeyboardEvent, type UIEvent, useLayoutEffect, useRef, useState } from "react";
import { Button } from "../../parts/button.tsx";
import { CaseRow } from "./case-row.tsx";
import "./case-table.css";
import type { LogbookRow, Sorting, SortKey } from "./logbook-filter.ts";
import { windowOfRows } from "./window-of-rows.ts";

interface CaseTableOptions {
  readonly rows: readonly LogbookRow[];
  readonly sorting: Sorting;
  readonly sort: (sorting: Sorting) => void;
  readonly clear: () => void;
}

const heads: readonly {
  readonly by: SortKey;
  readonly name: string;
  readonly figure?: true;
  readonly spare?: true;
  readonly room?: "wide" | "some";
}[] = [
  { by: "tooth", name: "Tooth" },
  { by: "pseudonym", name: "Patient" },
  { by: "treatment", name: "Treatment" },
  { by: "diagnosis", name: "Diagnosis", room: "wide" },
  { by: "presentedOn", name: "Presented" },
  { by: "filling", name: "Filling, mm short", figure: true, room: "some" },
  { by: "mishaps", name: "Mishaps" },
  { by: "score", name: "Periapical index", figure: true, spare: true },
  { by: "nextOn", name: "Next" },
];

/** In step with the height in case-table.css. */
const rowPx = 40;

/** The cases as a table; only the rows in sight are drawn. Arrow keys walk, Enter opens. */
export function CaseTable({ rows, sorting, sort, clear }: CaseTableOptions) {
  const box = useRef<HTMLElement>(null);
  const [scroll, setScroll] = useState({ top: 0, height: 900 });
  useLayoutEffect(() => {
    const element = box.current;
    if (element === null) return;
    const watch = new ResizeObserver(() => setScroll({ top: element.scrollTop, height: element.clientHeight }));
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  const { first, last, abovePx, belowPx } = windowOfRows(rows.length, rowPx, scroll.top, scroll.height);
  const move = ({ currentTarget }: UIEvent<HTMLElement>) =>
    setScroll({ top: currentTarget.scrollTop, height: currentTarget.clientHeight });
  return (
    <section ref={box} className="case-table-box" onScroll={move} aria-label="Cases">
      <table className="case-table" aria-rowcount={rows.length + 1} onKeyDown={walk}>
        <thead>
          <tr aria-rowindex={1}>
            {heads.map((head) => (
              <Head key={head.by} {...head} sorting={sorting} sort={sort} />
            ))}
          </tr>
        </thead>
        <tbody>
          {abovePx > 0 && <Space heightPx={abovePx} />}
          {rows.slice(first, last).map((row, index) => (
            <CaseRow key={row.caseId} row={row} index={first + index + 2} />
          ))}
          {belowPx > 0 && <Space heightPx={belowPx} />}
        </tbody>
      </table>
      {rows.length === 0 && (
        <p className="case-table-none">
          No case answers to all of these choices.{" "}
          <Button weight="bare" onClick={clear}>
            Show all
          </Button>
        </p>
      )}
    </section>
  );
}

const Space = ({ heightPx }: { readonly heightPx: number }) => (
  <tr style={{ height: heightPx }}>
    <td colSpan={heads.length} />
  </tr>
);

interface HeadOptions extends Pick<CaseTableOptions, "sorting" | "sort"> {
  readonly by: SortKey;
  readonly name: string;
  readonly figure?: true;
  readonly spare?: true;
  readonly room?: "wide" | "some";
}

function Head({ by, name, figure, spare, room, sorting, sort }: HeadOptions) {
  const on = sorting.by === by;
  return (
    <th
      scope="col"
      data-figure={figure}
      data-spare={spare}
      data-room={room}
      aria-sort={on ? (sorting.down ? "descending" : "ascending") : "none"}
    >
      <button type="button" onClick={() => sort({ by, down: on ? !sorting.down : false })}>
        {name}
        <span aria-hidden="true">{on ? (sorting.down ? " ↓" : " ↑") : ""}</span>
      </button>
    </th>
  );
}

function walk(event: KeyboardEvent<HTMLTableElement>): void {
  const step = { ArrowDown: "nextElementSibling", ArrowUp: "previousElementSibling" } as const;
  const way = event.key === "ArrowDown" || event.key === "ArrowUp" ? step[event.key] : undefined;
  const row = document.activeElement?.closest("tbody tr");
  const link = way && row?.[way]?.querySelector("a");
  if (!link) return;
  event.preventDefault();
  link.focus();
  link.scrollIntoView({ block: "nearest" });
}
