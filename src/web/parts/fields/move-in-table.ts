import type { KeyboardEvent } from "react";

const steps: Readonly<Record<string, readonly [column: number, row: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Arrow keys walk from cell to cell; inside a text sideways only from its ends. */
export function moveInTable(event: KeyboardEvent<HTMLTableElement>): void {
  const step = steps[event.key];
  const { target } = event;
  if (step === undefined || event.altKey || event.ctrlKey || event.shiftKey || !(target instanceof HTMLElement)) return;
  if (step[0] !== 0 && !atEnd(target, step[0])) return;
  if (target instanceof HTMLInputElement && target.type === "date") return;
  const next = neighbour(target, step);
  if (next === undefined) return;
  event.preventDefault();
  next.focus();
  if (next instanceof HTMLInputElement && next.type !== "date") next.select();
}

function atEnd(target: HTMLElement, way: number): boolean {
  if (!(target instanceof HTMLInputElement) || target.type === "date") return !(target instanceof HTMLInputElement);
  const { selectionStart, selectionEnd, value } = target;
  if (selectionStart !== selectionEnd) return selectionStart === 0 && selectionEnd === value.length;
  return way < 0 ? selectionStart === 0 : selectionStart === value.length;
}

function neighbour(target: HTMLElement, [column, row]: readonly [number, number]): HTMLElement | undefined {
  const cell = target.closest("td");
  const line = cell?.closest("tr");
  if (!cell || !line) return undefined;
  if (column !== 0) return controlIn(column < 0 ? cell.previousElementSibling : cell.nextElementSibling);
  const other = row < 0 ? line.previousElementSibling : line.nextElementSibling;
  return controlIn(other?.children[cell.cellIndex]);
}

const controlIn = (cell: Element | null | undefined): HTMLElement | undefined =>
  cell?.querySelector<HTMLElement>("input, select, textarea, button") ?? undefined;
