import { createContext, useContext } from "react";
import type { LeadsTo } from "../../../../../record/chairside/visit-standing.ts";
import type { MaterialEntered } from "../materials/material-dialogs.tsx";
import type { Visit } from "../materials/use-visit.ts";

/** What is noted in a dialog at the chair. */
export type Noted =
  | MaterialEntered
  | "timeOut"
  | "isolation"
  | "instrument"
  | "holdPoint"
  | "note"
  | "count"
  | "afterwards";

/** A dialog that stands open. */
export interface Opened {
  readonly what: Noted;
  /** The minute of the visit when it was opened. */
  readonly atMin: number | undefined;
  /** The visit as it was then. */
  readonly before: Visit;
  /** The step that is done once something was recorded. */
  readonly step?: number;
}

/** How something is opened from anywhere on the page of a visit. */
export interface BenchWays {
  readonly open: (what: Noted, step?: number) => void;
  /** Goes to where something is written: a dialog, or a field of the page. */
  readonly lead: (to: LeadsTo) => void;
}

/** See {@link BenchWays}. */
export const BenchContext = createContext<BenchWays>({ open: () => undefined, lead: () => undefined });

/** See {@link BenchWays}. */
export const useBenchWays = (): BenchWays => useContext(BenchContext);

const dialogOf: Partial<Readonly<Record<LeadsTo, Noted>>> = {
  ...{ timeOut: "timeOut", isolation: "isolation", holdPoint: "holdPoint", count: "count", temporary: "temporary" },
};

/** The dialog in which something that is open is noted; absent where it is written in a field of the page. */
export const dialogThatLeads = (to: LeadsTo): Noted | undefined => dialogOf[to];

/** Brings a place of the page into sight and the focus to its first field. */
export function goToPlace(to: LeadsTo): void {
  const place = document.getElementById(`visit-${to}`);
  place?.scrollIntoView({ block: "center" });
  const field = place?.querySelector<HTMLElement>("input, select, textarea, button");
  (field ?? place)?.focus({ preventScroll: true });
}
