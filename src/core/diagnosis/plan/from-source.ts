import { planSources } from "./plan-sources.ts";

/** A row's source with its mark; the row's own mark where it has one. */
export const fromSource = (source: string, mark = markOf(source)) => ({ source, mark });

/** The mark of a source by its id: seen or memory; common practice for what has no source, own for the person's. */
function markOf(id: string): "seen" | "memory" | "common practice" | "own" {
  if (id === "common practice" || id === "own") return id;
  return planSources.find((source) => source.id === id)?.verification ?? "memory";
}
